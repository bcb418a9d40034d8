import type { Context } from "hono";
import type { z } from "zod";

/** What a request states; undefined where that is not what its schema takes. */
export async function askedFor<S extends z.ZodType>(context: Context, schema: S): Promise<z.output<S> | undefined> {
  try {
    const parsed = schema.safeParse(await context.req.json());
    return parsed.success ? parsed.data : undefined;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

import { readSite } from "../../src/build/read-site.ts";
import { KitError, type KitMessage } from "../../src/input/files/message.ts";

/** What is wrong with the project `base`; nothing where it can be built. @throws what is no message to an author */
export async function inspect(base: string): Promise<readonly KitMessage[]> {
  try {
    const { crew } = await readSite(base);
    await crew.close();
    return [];
  } catch (error) {
    if (error instanceof KitError) return error.messages;
    throw error;
  }
}

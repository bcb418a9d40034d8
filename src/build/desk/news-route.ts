import type { Hono } from "hono";
import { streamSSE } from "hono/streaming";
import { DESK_ROUTES } from "../../input/desk/protocol.ts";
import type { Desk } from "./desk.ts";

/** So often a page is told that nothing happened, ms: a line that is dead is noticed. */
const BEAT = 20_000;

/** The news, to each page for as long as it listens. */
export function newsRoute(app: Hono, { news }: Pick<Desk, "news">): void {
  app.get(DESK_ROUTES.news, (context) =>
    streamSSE(context, async (stream) => {
      const end = Promise.withResolvers<void>();
      const stop = news.listen((one) => void stream.writeSSE({ event: "news", data: JSON.stringify(one) }));
      const beat = setInterval(() => void stream.write(": \n\n"), BEAT);
      stream.onAbort(() => end.resolve());
      // A page may wait for the first byte before it says that it listens.
      await stream.write(": \n\n");
      await end.promise;
      clearInterval(beat);
      stop();
    }),
  );
}

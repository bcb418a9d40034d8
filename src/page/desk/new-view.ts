import type { Refused } from "../bring/bring-host.ts";
import { bringView } from "../bring/bring-view.ts";
import { DeskRefused } from "./desk-server.ts";
import type { View } from "./view.ts";

/** The table on which a picture becomes a kit. */
export const newView: View = (place, { server, state, go }) =>
  bringView(place, {
    get: (route, query) => orRefused(() => server.get(route, query)),
    post: (route, body) => orRefused(() => server.post(route, body)),
    taken: () => state().kits.map(({ slug }) => slug),
    fonts: () => state().fonts,
    go,
  });

async function orRefused<T>(ask: () => Promise<T>): Promise<T | Refused> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof DeskRefused) return { refused: error.message };
    throw error;
  }
}

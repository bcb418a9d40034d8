import type { Refused } from "../bring/bring-host.ts";
import { bringView } from "../bring/bring-view.ts";
import { DeskRefused } from "./desk-server.ts";
import type { OpenDesk, View } from "./view.ts";

/** A kit that was made shows in the list within so long, ms; after that it is gone to all the same. */
const SOON = 10_000;

/** The table on which a picture becomes a kit. */
export const newView: View = (place, desk) => {
  const { server, state, go } = desk;
  const arrived = arrivals(desk);
  return bringView(place, {
    get: (route, query) => orRefused(() => server.get(route, query)),
    post: (route, body) => orRefused(() => server.post(route, body)),
    taken: () => state().kits.map(({ slug }) => slug),
    fonts: () => state().fonts,
    made: async (slug) => {
      await arrived(slug);
      go(`/kits/${slug}`);
    },
  });
};

/** Waits until a kit is on the desk: its folder is read a moment after it was made. */
function arrivals({ state, listen }: OpenDesk): (slug: string) => Promise<void> {
  let look = (): void => {};
  listen(({ news }) => {
    if (news === "state") look();
  });
  return (slug) =>
    new Promise((resolve) => {
      const timer = setTimeout(resolve, SOON);
      look = () => {
        if (!state().kits.some((kit) => kit.slug === slug)) return;
        clearTimeout(timer);
        resolve();
      };
      look();
    });
}

async function orRefused<T>(ask: () => Promise<T>): Promise<T | Refused> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof DeskRefused) return { refused: error.message };
    throw error;
  }
}

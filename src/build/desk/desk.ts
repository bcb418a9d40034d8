import type { DeskState, PrintAsk } from "../../input/desk/protocol.ts";
import type { BringRoom } from "./bring-room.ts";
import type { DrawingThread } from "./drawing-thread.ts";
import type { News } from "./news.ts";
import type { PageFiles } from "./page-files.ts";
import type { Texts } from "./texts.ts";

/** What the routes of the desk work with. */
export interface Desk {
  /** The project's folder. */
  readonly base: string;
  readonly news: News;
  readonly texts: Texts;
  /** Where pictures become kits. */
  readonly bring: BringRoom;
  /** What the desk's own page is made of. */
  readonly files: PageFiles;
  /** All that is on the desk, as it was found last. */
  readonly state: () => DeskState;
  /** The origin of the served site; undefined until it is served. */
  readonly site: () => string | undefined;
  /** The folder that the site is served from. */
  readonly output: string;
  /** Has made first what stands at a path below the site; settles when it is made, or cannot be. */
  readonly visit: (path: string) => Promise<void>;
  /** What draws for the desk. */
  readonly drawing: DrawingThread;
  /** Begins to print; how far that is comes as news. */
  readonly print: (asked: PrintAsk) => void;
}

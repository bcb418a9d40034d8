import type { DeskNews, DeskState } from "../../input/desk/protocol.ts";
import type { DeskServer } from "./desk-server.ts";

/** What each view of the desk works with. */
export interface OpenDesk {
  readonly server: DeskServer;
  /** All that is on the desk, as it was found last. */
  readonly state: () => DeskState;
  /** The served site's origin; undefined until it is served. */
  readonly site: () => string | undefined;
  /** Calls `heard` with all news while the view is open; after `state` news, `state()` is the new one. */
  readonly listen: (heard: (news: DeskNews) => void) => void;
  /** Goes to another view: `/kits/moon`. */
  readonly go: (address: string) => void;
  /** Says a sentence in the line at the top, also to those who listen; empty takes it away. */
  readonly tell: (sentence: string) => void;
}

/** How a view is left: false stays, as where something is not written yet. */
export type LeaveView = () => boolean;

/** A view fills `place`, which is empty, from the address below its own: the name of a kit, or nothing. */
export type View = (place: HTMLElement, desk: OpenDesk, name: string) => LeaveView | Promise<LeaveView>;

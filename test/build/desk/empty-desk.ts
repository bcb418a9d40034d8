import type { DeskState } from "../../../src/input/desk/protocol.ts";

/** A desk on which nothing lies. */
export function emptyDesk(title: string): DeskState {
  const site = { title, language: "en" };
  return { site, kits: [], classes: [], messages: [], shelf: [], fonts: [], isBusy: true };
}

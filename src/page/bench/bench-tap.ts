import type { Progress } from "../../core/bench/progress.ts";
import * as say from "../../words/messages.ts";
import { part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";
import type { Moves } from "./bench-input.ts";
import { bindSwitch } from "./bench-switch.ts";

/** What a tap is meant for itself. */
const OWN = "a, button, input, label, select, summary, textarea";

/** The moves where a tap anywhere may go on: then the way back undoes what was last done. */
export interface TapMoves extends Moves {
  /** Names the way back; called whenever something was shown. */
  readonly show: () => void;
}

/** A tap anywhere goes on, as long as the switch is on. A second one of a double tap does nothing more. */
export function bindTap(root: HTMLElement, host: BenchHost, moves: Moves): TapMoves {
  const toggle = part<HTMLInputElement>(root, "tap");
  let done: { readonly from: Progress; readonly to: Progress } | undefined;
  const undoable = (): Progress | undefined =>
    toggle.checked && done?.to === host.desk.progress && done.from !== done.to ? done.from : undefined;
  const show = (): void => {
    root.classList.toggle("tapping", toggle.checked);
    part(root, "back-words").textContent = undoable() ? say.benchTapUndo() : say.benchBack();
  };
  const go = (): void => {
    const from = host.desk.progress;
    moves.go();
    done = { from, to: host.desk.progress };
    show();
  };
  const back = (): void => {
    const from = undoable();
    if (from) host.move(({ clock, sitting }) => ({ ...from, clock, sitting }));
    else moves.back();
  };
  bindSwitch(toggle, "tap", show);
  part(root, "main").addEventListener("click", (event) => {
    const isOwn = (event.target as Element).closest(OWN) !== null || getSelection()?.isCollapsed === false;
    // A prompt wants an answer of its own.
    if (toggle.checked && event.detail <= 1 && !isOwn && part(root, "gate").hidden) go();
  });
  return { ...moves, go, back, show };
}

/** What keys and swipes do. */
export interface Moves {
  readonly next: () => void;
  readonly back: () => void;
  /** The main button: tick the leaf, or answer the prompt before it. */
  readonly go: () => void;
}

/** A finger that moved so far, px, and mostly sideways, has swiped. */
const SWIPE = 56;
const SWIPE_TIME = 900;

/** Arrows and page keys move; backspace goes back; space and enter press the main button unless something else has the focus. */
export function bindKeys(moves: Moves): void {
  document.addEventListener("keydown", (event) => {
    if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey) return;
    const target = event.target as HTMLElement;
    if (document.querySelector("dialog[open]") || target.matches("input:not([type=checkbox]), select, textarea"))
      return;
    const move = moveOf(event, target, moves);
    if (!move) return;
    event.preventDefault();
    move();
  });
}

function moveOf(event: KeyboardEvent, target: HTMLElement, moves: Moves): (() => void) | undefined {
  if (event.key === "ArrowRight" || event.key === "PageDown") return moves.next;
  if (event.key === "ArrowLeft" || event.key === "PageUp" || event.key === "Backspace") return moves.back;
  // A key that is held down must not tick a whole batch.
  const pressed = event.key === "Enter" || event.key === " ";
  if (!pressed) return undefined;
  if (target.matches("button, a, summary") || (event.key === " " && target.matches("input"))) return undefined;
  return event.repeat ? () => undefined : moves.go;
}

/** A swipe to the left goes on, to the right goes back. */
export function bindSwipe(stage: HTMLElement, moves: Moves): void {
  let start: { readonly x: number; readonly y: number; readonly at: number; readonly id: number } | undefined;
  stage.addEventListener("pointerdown", (event) => {
    start =
      event.pointerType === "mouse" || !event.isPrimary
        ? undefined
        : { x: event.clientX, y: event.clientY, at: event.timeStamp, id: event.pointerId };
  });
  stage.addEventListener("pointercancel", () => {
    start = undefined;
  });
  stage.addEventListener("pointerup", (event) => {
    if (!start || start.id !== event.pointerId) return;
    const [dx, dy] = [event.clientX - start.x, event.clientY - start.y];
    const quick = event.timeStamp - start.at < SWIPE_TIME;
    start = undefined;
    if (!quick || Math.abs(dx) < SWIPE || Math.abs(dx) < 2 * Math.abs(dy)) return;
    (dx < 0 ? moves.next : moves.back)();
  });
}

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

/** What else keys do. */
export interface KeyHelps {
  /** Whether arrows tick and go on as a pedal's page keys do. */
  readonly arrowsTick: () => boolean;
  /** The keys of the voice, by letter; none while it is silent. */
  readonly letters: () => Readonly<Record<string, () => void>>;
}

/**
 * Arrows move, page keys go on and back as pedals send them, backspace goes back; space and enter press the main button unless
 * something else has the focus.
 */
export function bindKeys(moves: Moves, helps: KeyHelps): void {
  document.addEventListener("keydown", (event) => {
    if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey) return;
    if (document.querySelector("dialog[open]")) return;
    const target = meantBy(event);
    if (target.matches("input:not([type=checkbox]), select, textarea")) return;
    const move = helps.letters()[event.key.toLowerCase()] ?? moveOf(event, target, moves, helps.arrowsTick());
    if (!move) return;
    event.preventDefault();
    move();
  });
}

/** What a key is meant for. Until a browser draws again, the focus may stay in a dialog that was closed: then it is for the page. */
function meantBy({ target }: KeyboardEvent): HTMLElement {
  const focused = target as HTMLElement;
  return focused.closest("dialog") ? document.body : focused;
}

const ON = ["ArrowRight", "ArrowDown"];
const BACK = ["ArrowLeft", "ArrowUp"];

function moveOf(event: KeyboardEvent, target: HTMLElement, moves: Moves, tick: boolean): (() => void) | undefined {
  const { key, repeat } = event;
  // A key that is held down must not tick a whole batch.
  const go = repeat ? () => undefined : moves.go;
  if (key === "PageDown" || (tick && ON.includes(key))) return go;
  if (key === "PageUp" || key === "Backspace" || (tick && BACK.includes(key))) return moves.back;
  if (key === "ArrowRight") return moves.next;
  if (key === "ArrowLeft") return moves.back;
  if (key !== "Enter" && key !== " ") return undefined;
  return target.matches("button, a, summary") || (key === " " && target.matches("input")) ? undefined : go;
}

/** A button of a move. Pressed by hand it lets go of the focus, so that space and enter are for the main button again. */
export function bindMove(button: HTMLElement, move: () => void): void {
  button.addEventListener("click", (event) => {
    if (event.detail > 0) button.blur();
    move();
  });
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

import * as say from "../../../words/messages.ts";

/** How far the writing is: nothing to write, so many changes, being written, written just now. */
export type Writing = "same" | "changed" | "writing" | "written";

/** What the ribbon says. */
export interface RibbonState {
  readonly title: string;
  readonly isDraft: boolean;
  /** How many changes can be taken back to what is on the disk, at least one where the texts differ. */
  readonly changes: number;
  readonly writing: Writing;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/** What the ribbon asks for. */
export interface RibbonHands {
  readonly undo: () => void;
  readonly redo: () => void;
  readonly look: () => void;
  readonly draft: (isDraft: boolean) => void;
}

/** The ribbon across the table: undo and redo, what changed, and the way to write it; with the keys for them. */
export class RibbonView {
  readonly #title: HTMLElement;
  readonly #told: HTMLElement;
  readonly #draft: HTMLInputElement;
  readonly #undo: HTMLButtonElement;
  readonly #redo: HTMLButtonElement;
  readonly #write: HTMLButtonElement;

  constructor(table: HTMLElement, hands: RibbonHands) {
    const find = <T extends HTMLElement>(name: string): T => table.querySelector<T>(`[data-${name}]`)!;
    this.#title = find("title");
    this.#told = find("told");
    this.#draft = find("draft");
    this.#undo = find("undo");
    this.#redo = find("redo");
    this.#write = find("write");
    this.#undo.addEventListener("click", hands.undo);
    this.#redo.addEventListener("click", hands.redo);
    this.#write.addEventListener("click", hands.look);
    this.#draft.addEventListener("change", () => hands.draft(this.#draft.checked));
  }

  show({ title, isDraft, changes, writing, canUndo, canRedo }: RibbonState): void {
    this.#title.textContent = title;
    this.#draft.checked = isDraft;
    this.#undo.disabled = !canUndo;
    this.#redo.disabled = !canRedo;
    this.#write.disabled = writing !== "changed";
    const told = TOLD[writing](changes);
    if (this.#told.textContent !== told) this.#told.textContent = told;
  }
}

const TOLD: Readonly<Record<Writing, (changes: number) => string>> = {
  same: () => say.deskKitToldSame(),
  changed: (changes) => say.deskKitToldChanged({ changes }),
  writing: () => say.deskKitToldWriting(),
  written: () => say.deskKitToldWritten(),
};

/** Which of the ribbon's hands a key asks for; keys that a text field has for itself stay its own. */
export function ribbonKey(event: KeyboardEvent): "undo" | "redo" | "look" | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const key = event.key.toLowerCase();
  if (key === "s" && !event.shiftKey) return "look";
  if (isTyping(event.target)) return undefined;
  if (key === "z") return event.shiftKey ? "redo" : "undo";
  return key === "y" && !event.shiftKey ? "redo" : undefined;
}

/** Whether a text is being typed that is not taken yet: its own undo comes first. */
function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLInputElement && target.dataset.field !== undefined && target.value !== target.defaultValue
  );
}

import type { ChangedLine } from "../../../input/desk/line-difference.ts";
import * as say from "../../../words/messages.ts";

/** The dialog that shows what will be written, and asks. */
export class DifferenceView {
  readonly #dialog: HTMLDialogElement;

  constructor(table: HTMLElement, write: () => void) {
    this.#dialog = table.querySelector<HTMLDialogElement>("[data-difference]")!;
    this.#dialog.querySelector("[data-not-yet]")!.addEventListener("click", () => this.#dialog.close());
    this.#dialog.querySelector("[data-write-now]")!.addEventListener("click", () => {
      this.#dialog.close();
      write();
    });
  }

  /** Shows the lines; of a broken text it says so. */
  open(file: string, lines: readonly ChangedLine[], isBroken: boolean): void {
    if (this.#dialog.open) return;
    const find = (name: string): HTMLElement => this.#dialog.querySelector<HTMLElement>(`[data-${name}]`)!;
    find("difference-lede").textContent = isBroken
      ? `${say.deskKitDifferenceIn({ file })} ${say.deskKitWriteBroken()}`
      : say.deskKitDifferenceIn({ file });
    find("write-now").textContent = isBroken ? say.deskKitWriteAnyway() : say.deskKitWrite();
    find("difference-lines").replaceChildren(...lines.map(lineElement));
    this.#dialog.showModal();
    find("write-now").focus();
  }
}

const SIGNS: Readonly<Record<ChangedLine["kind"], string>> = { gone: "− ", come: "+ ", same: "  " };

function lineElement({ kind, text }: ChangedLine): HTMLElement {
  const line = document.createElement("div");
  line.className = kind;
  line.textContent = SIGNS[kind] + text;
  return line;
}

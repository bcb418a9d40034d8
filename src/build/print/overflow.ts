import * as say from "../../words/messages.ts";

/** A box whose content is larger than itself; sizes in CSS pixels. */
export interface Overflow {
  /** The whole page, a box too wide, or a sheet too high. */
  readonly kind: "page" | "wide" | "high";
  /** The element with its classes, and its heading or what stands in it. */
  readonly box: string;
  readonly text: string;
  readonly size: number;
  readonly room: number;
}

/**
 * Runs in the page under print media: finds every box whose content is larger than itself, because Chromium would shrink
 * the whole document to fit, and a true-scale sheet would come out small. Empty when all is well.
 */
export function findOverflow(): Overflow[] {
  const found: Overflow[] = [];
  const check = (kind: Overflow["kind"], element: Element, text: string): void => {
    const [size, room] =
      kind === "high" ? [element.scrollHeight, element.clientHeight] : [element.scrollWidth, element.clientWidth];
    if (size <= room) return;
    const id = element.id ? `#${element.id}` : "";
    const classes = [...element.classList].map((one) => `.${one}`).join("");
    found.push({ kind, box: `${element.tagName.toLowerCase()}${id}${classes}`, text, size, room });
  };
  check("page", document.documentElement, "");
  for (const box of document.querySelectorAll("[data-sheet], [data-flow]")) {
    const heading = box.querySelector("h1, h2, h3")?.textContent?.trim() ?? "";
    check("wide", box, heading);
    if (box.hasAttribute("data-sheet")) check("high", box, heading);
  }
  for (const cell of document.querySelectorAll("[data-sheet] .mark, [data-sheet] td"))
    check("wide", cell, cell.textContent?.trim() ?? "");
  return found;
}

/** An overflow in words. */
export function sayOverflow({ kind, box, text, size, room }: Overflow): string {
  if (kind === "page") return say.printPageWide({ width: size, room });
  return kind === "wide"
    ? say.printBoxWide({ box, text, width: size, room })
    : say.printBoxHigh({ box, text, height: size, room });
}

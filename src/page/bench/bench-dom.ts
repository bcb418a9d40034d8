export { button, make } from "../shared/dom.ts";

/** The element of a page's skeleton with `data-<name>`. @throws Error where the layout has none */
export function part<T extends HTMLElement = HTMLElement>(root: ParentNode, name: string): T {
  const found = root.querySelector<T>(`[data-${name}]`);
  if (!found) throw new Error(`the page has no part "${name}"`);
  return found;
}

/** No-one types this: it stands for an element while a message is filled. */
const MARK = "\u0001";

/** A message with an element in one of its arguments, as what comes before it, itself, and what comes after. */
export function around(message: (argument: string) => string, element: HTMLElement): (Node | string)[] {
  const [before = "", after = ""] = message(MARK).split(MARK);
  return [before, element, after];
}

/** Opens a dialog of the page and binds its closing buttons once. */
export function openDialog(dialog: HTMLDialogElement): void {
  if (dialog.dataset.bound === undefined) {
    dialog.dataset.bound = "";
    for (const closer of dialog.querySelectorAll("[data-close]"))
      closer.addEventListener("click", () => dialog.close());
    dialog.addEventListener("click", (event) => {
      if (event.target === dialog) dialog.close();
    });
  }
  if (!dialog.open) dialog.showModal();
}

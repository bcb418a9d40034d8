import { part } from "./bench-dom.ts";

/** Does something that may take away what has the focus; it then goes to the main button, or to the way back. */
export function keepFocus(root: HTMLElement, change: () => void): void {
  const { activeElement } = document;
  change();
  const isGone = activeElement !== document.body && (!activeElement?.isConnected || activeElement.matches(":disabled"));
  if (isGone && !document.querySelector("dialog[open]")) focusMain(root);
}

/** Once a dialog closes, the focus is where it was opened, or else on the main button. */
export function keepFocusAfterDialogs(root: HTMLElement): void {
  for (const dialog of root.querySelectorAll("dialog"))
    dialog.addEventListener("close", () => {
      if (document.activeElement === document.body) focusMain(root);
    });
}

function focusMain(root: HTMLElement): void {
  const [go, back] = [part<HTMLButtonElement>(root, "go"), part<HTMLButtonElement>(root, "back")];
  (go.disabled ? back : go).focus({ preventScroll: true });
}

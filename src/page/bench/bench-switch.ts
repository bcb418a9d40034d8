import { keepChoice, keptChoice } from "./bench-store.ts";

/** A switch of the menu that is off until she wants it; the device keeps her choice. `changed` is called when she switches. */
export function bindSwitch(toggle: HTMLInputElement, choice: string, changed?: () => void): void {
  toggle.checked = keptChoice(choice) === "on";
  toggle.addEventListener("change", () => {
    keepChoice(choice, toggle.checked ? "on" : "off");
    changed?.();
  });
}

import * as say from "../../words/messages.ts";
import { keepChoice, keptChoice } from "./bench-store.ts";

const CHOICE = "awake";

/** Keeps the screen on where the browser can, as long as the switch is on and the page is seen. */
export function bindAwake(toggle: HTMLButtonElement): void {
  const supported = "wakeLock" in navigator;
  let wanted = supported && keptChoice(CHOICE) !== "off";
  let lock: WakeLockSentinel | undefined;
  let asking = false;

  const show = (): void => {
    const state = !supported ? "none" : lock ? "on" : wanted ? "waiting" : "off";
    toggle.dataset.state = state;
    toggle.setAttribute("aria-checked", String(lock !== undefined));
    toggle.disabled = !supported;
    toggle.querySelector("[data-awake-words]")!.textContent = supported ? say.benchAwake() : say.benchAwakeNone();
  };
  const ask = async (): Promise<void> => {
    if (!wanted || lock || asking || document.visibilityState !== "visible") return;
    asking = true;
    try {
      const got = await navigator.wakeLock.request("screen");
      got.addEventListener("release", () => {
        if (lock === got) lock = undefined;
        show();
      });
      if (wanted) lock = got;
      else await got.release();
    } catch {
      // The device refuses, for instance to save its battery: the switch shows it and can be pressed again.
    } finally {
      asking = false;
      show();
    }
  };
  toggle.addEventListener("click", async () => {
    wanted = lock === undefined;
    keepChoice(CHOICE, wanted ? "on" : "off");
    if (wanted) await ask();
    else await lock?.release();
    show();
  });
  document.addEventListener("visibilitychange", ask);
  show();
  ask();
}

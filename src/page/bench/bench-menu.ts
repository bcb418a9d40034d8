import { lostOf } from "../../core/bench/lost-leaves.ts";
import { leafWords } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
import { button, make, openDialog, part } from "./bench-dom.ts";
import { bindEvening } from "./bench-evening.ts";
import { bindFiles } from "./bench-files.ts";
import type { BenchHost } from "./bench-host.ts";
import { bindRulers } from "./bench-ruler-choice.ts";

/** The menu: units, the first batch, leaves left out, the piece's file, starting again. */
export function bindMenu(root: HTMLElement, host: BenchHost, changed: () => void): () => void {
  const dialog = part<HTMLDialogElement>(root, "menu");
  const units = part<HTMLSelectElement>(dialog, "units");
  units.addEventListener("change", () => {
    host.reopen({ units: units.value as "mm" | "in" });
    showRulers();
  });
  part(dialog, "menu-measure").addEventListener("click", () => {
    dialog.close();
    host.openMeasure();
  });
  bindFiles(dialog, host);
  const showEvening = bindEvening(dialog, host);
  const showRulers = bindRulers(dialog, host, changed);
  part(dialog, "anew").addEventListener("click", () => {
    const { ticks } = host.desk.progress;
    if (!window.confirm(say.benchStartAgainSure({ count: ticks.length }))) return;
    dialog.close();
    host.reopen({ progress: undefined });
  });
  return () => {
    units.value = host.desk.units;
    showEvening();
    showRulers();
    listLost(dialog, host);
    openDialog(dialog);
  };
}

function listLost(dialog: HTMLDialogElement, host: BenchHost): void {
  const lost = lostOf(host.desk.progress).map((one) => {
    const leaf = leafWords(host.desk.plan, one);
    const back = button(say.benchPutBackShort(), "quiet", () => {
      dialog.close();
      host.openRecovery(one);
    });
    back.setAttribute("aria-label", say.benchPutBackLeaf({ leaf }));
    return make("li", "", leaf, " ", back);
  });
  part(dialog, "lost-list").replaceChildren(...(lost.length > 0 ? lost : [make("li", "", say.benchLeftOutNone())]));
}

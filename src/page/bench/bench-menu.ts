import { type Jump, jumpToLeaf, jumpToPage, leafInWords } from "../../core/bench/jump.ts";
import { lostOf, showLeaf } from "../../core/bench/progress.ts";
import { Problem } from "../../core/problem.ts";
import { ProgressError, parseProgress, serialiseProgress } from "../../input/progress/progress-file.ts";
import { offerFile } from "../shared/offer-file.ts";
import { button, make, openDialog, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** The dialog that goes to a page or leaf. */
export function bindJump(root: HTMLElement, host: BenchHost): (reason?: string) => void {
  const dialog = part<HTMLDialogElement>(root, "jump");
  const form = part<HTMLFormElement>(dialog, "jump-form");
  const number = part<HTMLInputElement>(form, "jump-number");
  const answer = part(form, "jump-answer");
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const byLeaf = (event.submitter as HTMLButtonElement | null)?.value === "leaf";
    const wanted = Number(number.value.trim());
    const jump: Jump =
      number.value.trim() === "" || !Number.isInteger(wanted)
        ? { problem: "Write a whole number." }
        : (byLeaf ? jumpToLeaf : jumpToPage)(host.desk.plan, wanted);
    if ("problem" in jump) {
      answer.textContent = jump.problem;
      number.focus();
      return;
    }
    dialog.close();
    host.move((progress) => showLeaf(progress, jump.leaf));
  });
  return (reason = "") => {
    part(dialog, "jump-reason").textContent = reason;
    answer.textContent = "";
    number.value = "";
    openDialog(dialog);
    number.focus();
  };
}

/** The menu: units, the first batch, leaves left out, the progress file, beginning anew. */
export function bindMenu(root: HTMLElement, host: BenchHost): () => void {
  const dialog = part<HTMLDialogElement>(root, "menu");
  const units = part<HTMLSelectElement>(dialog, "units");
  units.addEventListener("change", () => host.reopen({ units: units.value as "mm" | "in" }));
  part(dialog, "menu-measure").addEventListener("click", () => {
    dialog.close();
    host.openMeasure();
  });
  bindFiles(dialog, host);
  part(dialog, "anew").addEventListener("click", () => {
    const { ticks } = host.desk.progress;
    if (!window.confirm(`Clear all ${ticks.length} ticks and begin this book anew?`)) return;
    dialog.close();
    host.reopen({ progress: undefined });
  });
  return () => {
    units.value = host.desk.units;
    tell(dialog, "");
    listLost(dialog, host);
    openDialog(dialog);
  };
}

function listLost(dialog: HTMLDialogElement, host: BenchHost): void {
  const lost = lostOf(host.desk.progress).map((leaf) => {
    const back = button("Take back in", "quiet", () => {
      dialog.close();
      host.openRecovery(leaf);
    });
    back.setAttribute("aria-label", `Take ${leafInWords(host.desk.plan, leaf)} back in`);
    return make("li", "", `${leafInWords(host.desk.plan, leaf)} `, back);
  });
  part(dialog, "lost-list").replaceChildren(...(lost.length > 0 ? lost : [make("li", "", "none")]));
}

function bindFiles(dialog: HTMLDialogElement, host: BenchHost): void {
  part<HTMLAnchorElement>(dialog, "export").addEventListener("click", (event) => {
    const { progress } = host.desk;
    offerFile(event.currentTarget as HTMLAnchorElement, serialiseProgress(progress), `${progress.kit}-progress.json`);
  });
  const file = part<HTMLInputElement>(dialog, "import");
  file.addEventListener("change", async () => {
    const chosen = file.files?.[0];
    if (!chosen) return;
    const text = await chosen.text();
    file.value = "";
    takeIn(dialog, host, text, chosen.name);
  });
}

function takeIn(dialog: HTMLDialogElement, host: BenchHost, text: string, name: string): void {
  const { kit, fit } = host.desk.progress;
  try {
    const progress = parseProgress(text, { kit, fit });
    host.reopen({ progress });
    tell(dialog, `${name} is taken in: ${progress.ticks.length} leaves ticked.`);
    listLost(dialog, host);
  } catch (error) {
    if (error instanceof ProgressError) {
      tell(dialog, `${name} cannot be taken in: ${error.message}.`);
      if (error.fit !== undefined) offerOther(dialog, error.fit);
    } else if (error instanceof Problem) {
      tell(
        dialog,
        `${name} cannot be taken in: its lost leaves do not fit this book (${error.given}; ${error.allowed}).`,
      );
    } else throw error;
  }
}

function offerOther(dialog: HTMLDialogElement, fit: string): void {
  const link = make("a", "", "Open that one");
  link.href = `index.html${fit === "" ? "" : `?${fit}`}`;
  part(dialog, "file-answer").append(" ", link, " and take the file in there.");
}

function tell(dialog: HTMLDialogElement, words: string): void {
  part(dialog, "file-answer").textContent = words;
}

import { parseProgress, serialiseProgress } from "../../input/progress/progress-file.ts";
import { whyText } from "../../words/findings/failure-why.ts";
import * as say from "../../words/messages.ts";
import { progressFailure } from "../../words/progress.ts";
import { offerFile } from "../shared/offer-file.ts";
import { around, make, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** Progress out of this browser as a file, and back from one. `opened` is called when a file was read. Gives back what clears the answer. */
export function bindFiles(dialog: HTMLDialogElement, host: BenchHost, opened: () => void): () => void {
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
    if (openFile(dialog, host, text, chosen.name)) opened();
  });
  return () => answer(dialog, "");
}

function openFile(dialog: HTMLDialogElement, host: BenchHost, text: string, file: string): boolean {
  const { kit, fit } = host.desk.progress;
  const read = parseProgress(text, { kit, fit });
  if ("failure" in read) {
    answer(dialog, say.benchFileRefused({ file, why: progressFailure(read.failure) }));
    if (read.failure.kind === "other-fit") offerOther(dialog, read.failure.fit);
    return false;
  }
  const failure = host.reopen({ progress: read.progress });
  if (failure) {
    const { units, kit: own } = host.desk;
    answer(dialog, say.benchFileMisfit({ file, why: whyText(failure, { units, levels: own.levels }) }));
    return false;
  }
  answer(dialog, say.benchFileOpened({ file, count: read.progress.ticks.length }));
  return true;
}

function offerOther(dialog: HTMLDialogElement, fit: string): void {
  const link = make("a", "", say.benchFileElsewhereLink());
  link.href = `index.html${fit === "" ? "" : `?${fit}`}`;
  part(dialog, "file-answer").append(" ", ...around((words) => say.benchFileElsewhere({ link: words }), link));
}

function answer(dialog: HTMLDialogElement, words: string): void {
  part(dialog, "file-answer").textContent = words;
}

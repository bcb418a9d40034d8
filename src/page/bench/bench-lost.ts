import type { Desk } from "../../core/bench/desk.ts";
import { leafInWords } from "../../core/bench/jump.ts";
import { bringBack, isTicked, loseLeaf, lostOf } from "../../core/bench/progress.ts";
import { type Recovery, recover } from "../../core/bench/recovery.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { Problem } from "../../core/problem.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import { openDialog, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** The dialog that shows what leaving a leaf out does to the rest, before anything is done. */
export function bindRecovery(root: HTMLElement, host: BenchHost): (leaf: number) => void {
  const dialog = part<HTMLDialogElement>(root, "recovery");
  let confirmed: (() => void) | undefined;
  part(dialog, "recovery-do").addEventListener("click", () => {
    dialog.close();
    confirmed?.();
  });
  dialog.addEventListener("close", () => clearPictures(dialog));
  return (leaf) => {
    const { desk } = host;
    const back = lostOf(desk.progress).includes(leaf);
    const lost = lostOf(desk.progress);
    const result = recover(desk.plan, back ? lost.filter((one) => one !== leaf) : [...lost, leaf]);
    const words = leafInWords(desk.plan, leaf);
    part(dialog, "recovery-title").textContent = back ? `Take ${words} back in?` : `Leave ${words} out?`;
    part(dialog, "recovery-words").textContent =
      result instanceof Problem ? refusal(result) : effect(desk, leaf, result, back);
    const doing = part<HTMLButtonElement>(dialog, "recovery-do");
    doing.hidden = result instanceof Problem;
    doing.textContent = back ? "Take it back in" : "Leave it out";
    part(dialog, "recovery-pictures").hidden = result instanceof Problem;
    if (!(result instanceof Problem)) {
      showPicture(dialog, "before", desk, desk.plan.pattern);
      showPicture(dialog, "after", desk, result.plan.pattern);
      confirmed = () => carryOut(host, leaf, result, back);
    }
    openDialog(dialog);
  };
}

function carryOut(host: BenchHost, leaf: number, { changed }: Recovery, back: boolean): void {
  const words = leafInWords(host.desk.plan, leaf);
  host.move(
    (progress) => ({ ...(back ? bringBack : loseLeaf)(progress, leaf, changed), at: leaf }),
    back ? `${words} is back in.` : `${words} is left out; ${changed.length} leaves have new marks.`,
  );
}

function refusal(problem: Problem): string {
  return problem.field === "fit.lostLeaves"
    ? `This leaf cannot be left out: ${problem.given}; ${problem.allowed}. ${problem.remedy[0]!.toUpperCase()}${problem.remedy.slice(1)}.`
    : `The picture cannot close over it: ${problem.given}; ${problem.allowed}.`;
}

function effect({ plan, progress }: Desk, leaf: number, { changed }: Recovery, back: boolean): string {
  const ticked = changed.filter((one) => isTicked(progress, one));
  const rest = back
    ? "The rest of the picture is laid out again with this leaf."
    : "The rest of the picture is laid out anew over the leaves that remain, so that nothing of it is missing.";
  const first = changed[0];
  const which =
    first === undefined
      ? "No other leaf changes."
      : `${changed.length} ${changed.length === 1 ? "leaf changes" : "leaves change"}, the first is ${leafInWords(plan, first)}; all before keep their marks and ticks.`;
  const redo =
    ticked.length === 0
      ? ""
      : ` ${ticked.length} of them ${ticked.length === 1 ? "is" : "are"} ticked and would lose the tick: if they are cut already, cancel, and go on with the leaf that lies open; one missing leaf shows less than cuts made twice.`;
  const where = back
    ? ""
    : ` Fold leaf ${leaf} whole, deep enough to vanish behind its neighbours, or cut it away near the gutter.`;
  return `${rest} ${which}${redo}${where}`;
}

function showPicture(dialog: HTMLElement, name: "before" | "after", desk: Desk, pattern: Pattern): void {
  const svg = frontPicture(pattern, { slug: desk.kit.slug, title: desk.kit.title, mood: "day" });
  const image = part<HTMLImageElement>(dialog, `picture-${name}`);
  image.src = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
}

function clearPictures(dialog: HTMLElement): void {
  for (const image of dialog.querySelectorAll("img")) {
    if (image.src.startsWith("blob:")) URL.revokeObjectURL(image.src);
    image.removeAttribute("src");
  }
}

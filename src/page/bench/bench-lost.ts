import type { Desk } from "../../core/bench/desk.ts";
import { bringBack, isTicked, loseLeaf, lostOf } from "../../core/bench/progress.ts";
import { type Recovery, recover } from "../../core/bench/recovery.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { Problem } from "../../core/problem.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import { leafWords } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
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
    const named = { leaf: leafWords(desk.plan, leaf) };
    part(dialog, "recovery-title").textContent = back ? say.benchPutLeafBack(named) : say.benchLeaveOut(named);
    part(dialog, "recovery-words").textContent =
      result instanceof Problem ? refusal(result) : effect(desk, leaf, result, back);
    const doing = part<HTMLButtonElement>(dialog, "recovery-do");
    doing.hidden = result instanceof Problem;
    doing.textContent = back ? say.benchPutBack() : say.benchLeaveOutDo();
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
  const named = leafWords(host.desk.plan, leaf);
  host.move(
    (progress) => ({ ...(back ? bringBack : loseLeaf)(progress, leaf, changed), at: leaf }),
    back ? say.benchBackInNow({ leaf: named }) : say.benchLeftOutNow({ leaf: named, count: changed.length }),
  );
}

function refusal(problem: Problem): string {
  const { given, allowed } = problem;
  if (problem.field !== "fit.lostLeaves") return say.benchCannotClose({ given, allowed });
  const remedy = problem.remedy[0]!.toUpperCase() + problem.remedy.slice(1);
  return say.benchCannotLeaveOut({ given, allowed, remedy });
}

function effect({ plan, progress }: Desk, leaf: number, { changed }: Recovery, back: boolean): string {
  const ticked = changed.filter((one) => isTicked(progress, one)).length;
  const first = changed[0];
  return [
    back ? say.benchSpreadBack() : say.benchSpread(),
    first === undefined
      ? say.benchNoLeafChanges()
      : say.benchLeavesChange({ count: changed.length, first: leafWords(plan, first) }),
    ...(ticked > 0 ? [say.benchTicksGo({ count: ticked })] : []),
    ...(back ? [] : [say.benchFoldAway({ leaf })]),
  ].join(" ");
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

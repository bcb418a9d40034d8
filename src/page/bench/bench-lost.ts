import type { Desk } from "../../core/bench/desk.ts";
import { bringBack, loseLeaf, lostOf } from "../../core/bench/lost-leaves.ts";
import { isTicked, showLeaf } from "../../core/bench/progress.ts";
import { type Recovery, recover } from "../../core/bench/recovery.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { isFailure } from "../../core/findings/outcome.ts";
import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import { leafWords } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
import { openDialog, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";
import { faceOf } from "./face-of.ts";
import { whyNot } from "./why-not.ts";

/** The dialog that shows what leaving a leaf out does to the rest, before anything is done. */
export function bindRecovery(root: HTMLElement, host: BenchHost): (leaf: LeafNumber) => void {
  const dialog = part<HTMLDialogElement>(root, "recovery");
  let confirmed: (() => void) | undefined;
  /** What the dialog was opened for last: why something cannot be done may come late. */
  let latest: object | undefined;
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
    const words = part(dialog, "recovery-words");
    words.textContent = isFailure(result) ? "" : effect(desk, leaf, result.value, back);
    const turn = {};
    latest = turn;
    if (isFailure(result))
      whyNot(({ refusal }) => refusal(result.failure, { units: desk.units, levels: desk.kit.levels })).then((why) => {
        if (latest === turn) words.textContent = why;
      });
    const doing = part<HTMLButtonElement>(dialog, "recovery-do");
    doing.hidden = isFailure(result);
    doing.textContent = back ? say.benchPutBack() : say.benchLeaveOutDo();
    part(dialog, "recovery-pictures").hidden = isFailure(result);
    if (!isFailure(result)) {
      showPicture(dialog, "before", desk, desk.plan.pattern);
      showPicture(dialog, "after", desk, result.value.plan.pattern);
      confirmed = () => carryOut(host, leaf, result.value, back);
    }
    openDialog(dialog);
  };
}

function carryOut(host: BenchHost, leaf: LeafNumber, { changed }: Recovery, back: boolean): void {
  const named = leafWords(host.desk.plan, leaf);
  host.move(
    (progress) => showLeaf((back ? bringBack : loseLeaf)(progress, leaf, changed), leaf),
    back ? say.benchBackInNow({ leaf: named }) : say.benchLeftOutNow({ leaf: named, count: changed.length }),
  );
}

function effect({ plan, progress }: Desk, leaf: LeafNumber, { changed }: Recovery, back: boolean): string {
  const ticked = changed.filter((one) => isTicked(progress, one)).length;
  const first = changed[0];
  const { instead, ticks, away } = faceOf(plan).lost;
  return [
    ...(back ? [] : instead()),
    back ? say.benchSpreadBack() : say.benchSpread(),
    first === undefined
      ? say.benchNoLeafChanges()
      : say.benchLeavesChange({ count: changed.length, first: leafWords(plan, first) }),
    ...(ticked > 0 ? [ticks(ticked)] : []),
    ...(back ? [] : [away(leaf)]),
  ].join(" ");
}

function showPicture(dialog: HTMLElement, name: "before" | "after", desk: Desk, pattern: AnyPattern): void {
  const svg = faceOf({ pattern }).picture(pattern, { slug: desk.kit.slug, title: desk.kit.title, mood: "day" });
  const image = part<HTMLImageElement>(dialog, `picture-${name}`);
  image.src = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
}

function clearPictures(dialog: HTMLElement): void {
  for (const image of dialog.querySelectorAll("img")) {
    if (image.src.startsWith("blob:")) URL.revokeObjectURL(image.src);
    image.removeAttribute("src");
  }
}

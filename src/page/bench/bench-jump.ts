import { jumpToLeaf, jumpToPage } from "../../core/bench/jump.ts";
import { showLeaf } from "../../core/bench/progress.ts";
import { leafNumber } from "../../core/book/leaf-number.ts";
import { jumpAnswer } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
import { openDialog, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** The dialog that goes to a page or leaf. */
export function bindJump(root: HTMLElement, host: BenchHost): (reason?: string) => void {
  const dialog = part<HTMLDialogElement>(root, "jump");
  const form = part<HTMLFormElement>(dialog, "jump-form");
  const number = part<HTMLInputElement>(form, "jump-number");
  const answer = part(form, "jump-answer");
  const refuse = (words: string): void => {
    answer.textContent = words;
    number.focus();
  };
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const byLeaf = (event.submitter as HTMLButtonElement | null)?.value === "leaf";
    const text = number.value.trim();
    const wanted = Number(text);
    if (text === "" || !Number.isInteger(wanted)) return refuse(say.benchJumpNotWhole());
    const { plan } = host.desk;
    const jump = byLeaf ? jumpToLeaf(plan, leafNumber(wanted)) : jumpToPage(plan, wanted);
    if ("obstacle" in jump) return refuse(jumpAnswer(jump));
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

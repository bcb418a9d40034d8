import { stopAt, stopOf } from "../../core/bench/sitting.ts";
import * as say from "../../words/messages.ts";
import { part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";
import { keepChoice, keptChoice } from "./bench-store.ts";
import { stopWords } from "./bench-times.ts";

/** The time of day at which she last wanted to stop, as `21:30`. */
const CHOICE = "stop-at";

/** The part of the menu that says when to stop. Gives back what shows it anew. */
export function bindEvening(dialog: HTMLDialogElement, host: BenchHost): () => void {
  const field = part<HTMLInputElement>(dialog, "stop-at");
  const answer = (): void => {
    const { progress } = host.desk;
    part(dialog, "stop-answer").textContent = stopWords(host.desk, Date.now()) || say.benchStopLead();
    part(dialog, "stop-clear").hidden = stopOf(progress, Date.now()) === undefined;
  };
  const set = (until: number | undefined): void => {
    host.move((progress) => stopAt(progress, until, Date.now()));
    answer();
  };
  field.addEventListener("change", () => {
    if (field.value === "") return set(undefined);
    keepChoice(CHOICE, field.value);
    set(nextTime(field.value));
  });
  part(dialog, "stop-clear").addEventListener("click", () => {
    set(undefined);
    field.focus();
  });
  return () => {
    if (field.value === "") field.value = keptChoice(CHOICE) ?? "";
    answer();
  };
}

/** The next time at which a clock shows `21:30`, ms of the epoch. */
function nextTime(clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(":").map(Number);
  const time = new Date();
  time.setHours(hours, minutes, 0, 0);
  if (time.getTime() <= Date.now()) time.setDate(time.getDate() + 1);
  return time.getTime();
}

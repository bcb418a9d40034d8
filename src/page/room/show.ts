import type { Stretch } from "../../core/class/running-order.ts";
import { dayTimeText, minutesText } from "../../words/clock.ts";
import * as say from "../../words/messages.ts";
import { bindTimer } from "./countdown.ts";
import { type Moment, momentOf, nextTarget, statedBeginning } from "./session-clock.ts";

/** A session as the page carries it. */
interface ShownSession {
  readonly date: string | undefined;
  readonly starts: string | undefined;
  readonly order: readonly Stretch[];
}

const MINUTE = 60_000;
const SECOND = 1000;

/** Binds what is projected: one step at a time, the clock, where the session stands, and the targets that count now. */
export function bindShow(room: HTMLElement, chosen: (session: number) => void): void {
  const form = room.querySelector<HTMLFormElement>("[data-show-form]")!;
  const sessions = JSON.parse(room.querySelector<HTMLElement>("[data-order]")!.dataset["order"]!) as ShownSession[];
  const select = form.elements.namedItem("session") as HTMLSelectElement;
  const begun = new Map<number, number>();
  select.value = String(todays(sessions, Date.now()));
  const render = (): void => {
    const now = Date.now();
    const index = Number(select.value);
    const session = sessions[index]!;
    const begins = begun.get(index) ?? statedBeginning(session.date, session.starts);
    const moment = begins === undefined ? undefined : momentOf(session.order, begins, now);
    room.querySelector("[data-clock]")!.textContent = dayTimeText(now, now);
    setText(room.querySelector("[data-stretch]")!, stretchText(session.order, moment, now));
    const target = `${index}-${nextTarget(session.order, moment)}`;
    for (const list of room.querySelectorAll<HTMLElement>("[data-target]"))
      list.classList.toggle("now", list.dataset["target"] === target);
  };
  select.addEventListener("change", () => {
    render();
    chosen(Number(select.value));
  });
  form.querySelector("[data-begin]")!.addEventListener("click", () => {
    begun.set(Number(select.value), Date.now());
    render();
  });
  bindSteps(room, form);
  bindTimer(form);
  form.querySelector("[data-full]")!.addEventListener("click", () => toggleFull(room.querySelector("[data-show]")!));
  form.addEventListener("submit", (event) => event.preventDefault());
  form.hidden = false;
  room.classList.add("live");
  chosen(Number(select.value));
  render();
  setInterval(render, SECOND);
}

/** The session of today, else the next one, else the last. */
function todays(sessions: readonly ShownSession[], now: number): number {
  const next = sessions.findIndex(({ date }) => date !== undefined && Date.parse(`${date}T23:59`) >= now);
  return next >= 0 ? next : sessions.every(({ date }) => date === undefined) ? 0 : sessions.length - 1;
}

function stretchText(order: readonly Stretch[], moment: Moment | undefined, now: number): string {
  switch (moment?.at) {
    case undefined:
      return say.roomUnbegun();
    case "before":
      return say.roomBefore({ time: dayTimeText(moment.begins, now) });
    case "after":
      return say.roomAfter();
    case "stretch": {
      const left = minutesText(Math.ceil((moment.until - now) / MINUTE));
      return say.roomStretch({ kind: order[moment.index]!.kind, until: dayTimeText(moment.until, now), left });
    }
  }
}

/** One step at a time; the arrow keys and page keys of a clicker go on and back. */
function bindSteps(room: HTMLElement, form: HTMLElement): void {
  const steps = [...room.querySelectorAll<HTMLElement>("[data-shown]")];
  let shown = 0;
  const go = (by: 1 | -1): void => {
    shown = Math.min(steps.length - 1, Math.max(0, shown + by));
    for (const [i, step] of steps.entries()) step.toggleAttribute("data-now", i === shown);
  };
  form.querySelector("[data-previous]")!.addEventListener("click", () => go(-1));
  form.querySelector("[data-next]")!.addEventListener("click", () => go(1));
  document.addEventListener("keydown", (event) => {
    if (event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement) return;
    if (
      event.altKey ||
      event.ctrlKey ||
      event.metaKey ||
      window.scrollY > room.querySelector("[data-show]")!.clientHeight
    )
      return;
    const by = KEYS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    go(by);
  });
}

const KEYS: Readonly<Record<string, 1 | -1>> = { ArrowRight: 1, PageDown: 1, ArrowLeft: -1, PageUp: -1 };

function toggleFull(show: Element): void {
  if (document.fullscreenElement) void document.exitFullscreen();
  else show.requestFullscreen?.().catch(() => undefined);
}

/** What is read aloud when it changes is not written again where it has not. */
function setText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

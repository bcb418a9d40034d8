import * as say from "../../words/messages.ts";

const SECOND = 1000;

/** A timer for the whole room: counts whole seconds down by the clock, and says when time is up. */
export function bindTimer(form: HTMLFormElement): void {
  const minutes = form.elements.namedItem("minutes") as HTMLInputElement;
  const button = form.querySelector<HTMLButtonElement>("[data-timer]")!;
  const shown = form.querySelector<HTMLOutputElement>("[data-left]")!;
  let until: number | undefined;
  const render = (): void => {
    button.textContent = until === undefined ? say.roomTimerStart() : say.roomTimerStop();
    if (until === undefined) return;
    const left = Math.max(0, Math.ceil((until - Date.now()) / SECOND));
    shown.textContent = left === 0 ? say.roomTimerOver() : countdownText(left);
    shown.classList.toggle("over-now", left === 0);
  };
  button.addEventListener("click", () => {
    if (until === undefined && !minutes.reportValidity()) return;
    until = until === undefined ? Date.now() + Number(minutes.value) * 60 * SECOND : undefined;
    if (until === undefined) shown.textContent = "";
    shown.classList.remove("over-now");
    render();
  });
  setInterval(render, SECOND / 4);
}

/** `9:05`, with hours where there are some: `1:09:05`. */
export function countdownText(seconds: number): string {
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const two = (value: number): string => String(value).padStart(2, "0");
  return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}

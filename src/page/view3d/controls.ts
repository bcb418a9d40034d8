import { toDegrees, toRadians } from "../../core/units/angle.ts";
import type { RoundData } from "../../output/data/round-data.ts";
import * as say from "../../words/messages.ts";
import { openingWords, standpointWords, turntableWords } from "../../words/round.ts";
import { bindPointers, type Turner, turnByKey } from "./gestures.ts";
import { LEVEL_COLOURS } from "./level-colours.ts";
import { isOwn, openedShape } from "./opened-shape.ts";
import { FRONT, moved, type Orbit, THREE_QUARTER, unwound } from "./orbit.ts";
import { Turntable } from "./turntable.ts";

/** Least and greatest opening of the slider, degrees. */
const LEAST = 20;
const MOST = 180;

/** From where a button shows the book. */
const STANDPOINTS: Readonly<Record<string, Orbit>> = {
  front: FRONT,
  left: { turn: toRadians(-28), tilt: toRadians(6), distance: 1 },
  right: { turn: toRadians(28), tilt: toRadians(6), distance: 1 },
  above: { turn: toRadians(-15), tilt: toRadians(55), distance: 1 },
  behind: { turn: toRadians(180), tilt: toRadians(12), distance: 1 },
};

/** From where a view begins, and who hears where it went. */
export interface Standpoint {
  readonly begin: Orbit;
  readonly moved: (orbit: Orbit) => void;
}

/** Fills the stage from the page's template, and gives back what closes the view again. @throws Error where WebGL 2 is missing */
export function showControls(
  stage: HTMLElement,
  template: HTMLTemplateElement,
  data: RoundData,
  standpoint: Standpoint = { begin: THREE_QUARTER, moved: () => {} },
): () => void {
  stage.replaceChildren(template.content.cloneNode(true));
  stage.querySelector("[data-round-text]")!.textContent = turntableWords({
    corners: data.leaves.some(({ corners }) => corners),
    light: data.light !== undefined,
    window: data.insert !== undefined,
  });
  const canvas = stage.querySelector("canvas")!;
  const turntable = new Turntable(canvas, data);
  bindOrbit(stage, canvas, turntable, standpoint);
  bindOpening(stage, turntable, data);
  bindLook(stage, turntable, data);
  return () => {
    turntable.dispose();
    stage.replaceChildren();
  };
}

function bindOrbit(
  stage: HTMLElement,
  canvas: HTMLCanvasElement,
  turntable: Turntable,
  { begin, moved: told }: Standpoint,
): void {
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  const words = stage.querySelector("[data-round-orbit]")!;
  let orbit = begin;
  const look = (next: Orbit, settle: boolean): void => {
    orbit = next;
    told(next);
    turntable.look(orbit, settle && !still.matches);
    words.textContent = standpointWords(unwound(orbit));
  };
  const turner: Turner = (change, settle) => look(change(orbit), settle);
  const goTo = (standpoint: Orbit): void => {
    turntable.look(unwound(orbit), false);
    look(standpoint, true);
  };
  canvas.addEventListener("keydown", (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (turnByKey(event.key, turner, () => goTo(FRONT))) event.preventDefault();
  });
  bindPointers(canvas, turner);
  for (const button of stage.querySelectorAll<HTMLButtonElement>("[data-round-place]"))
    button.addEventListener("click", () => goTo(STANDPOINTS[button.dataset.roundPlace!]!));
  for (const button of stage.querySelectorAll<HTMLButtonElement>("[data-round-zoom]"))
    button.addEventListener("click", () =>
      turner((from) => moved(from, { factor: button.dataset.roundZoom === "in" ? 1 / 1.25 : 1.25 }), true),
    );
  look(begin, false);
}

function bindOpening(stage: HTMLElement, turntable: Turntable, data: RoundData): void {
  const slider = stage.querySelector<HTMLInputElement>("[data-round-opening]")!;
  const words = stage.querySelector<HTMLElement>("[data-round-shape]")!;
  const back = stage.querySelector<HTMLButtonElement>("[data-round-own]")!;
  const own = Math.round(toDegrees(data.fit.opening));
  slider.min = String(Math.min(LEAST, own));
  slider.max = String(Math.max(MOST, own));
  const opened = (): void => {
    const opening = toRadians(slider.valueAsNumber);
    turntable.open(opening);
    const shape = openedShape(data, opening);
    words.replaceChildren(
      ...(["mm", "in"] as const).map((units) => {
        const span = document.createElement("span");
        span.className = `u-${units}`;
        span.textContent = openingWords(shape, units);
        return span;
      }),
    );
    slider.setAttribute("aria-valuetext", say.unitDegree({ degrees: slider.valueAsNumber }));
    back.disabled = isOwn(data, opening);
  };
  const backToOwn = (): void => {
    slider.value = String(own);
    opened();
  };
  slider.addEventListener("input", opened);
  back.addEventListener("click", backToOwn);
  backToOwn();
}

function bindLook(stage: HTMLElement, turntable: Turntable, data: RoundData): void {
  bindCheckbox(stage, "light", (on) => {
    turntable.light(on);
    stage.classList.toggle("round-lit", on);
  });
  bindCheckbox(stage, "window", (on) => turntable.showWindow(on));
  bindCheckbox(stage, "motifs", (on) => turntable.showMotifs(on));
  const legend = stage.querySelector<HTMLElement>("[data-round-legend]")!;
  legend.replaceChildren(...data.levels.map(({ name }, i) => legendEntry(i + 1, name)));
  bindCheckbox(stage, "levels", (on) => {
    turntable.colourLevels(on);
    legend.hidden = !on;
  });
  const door = stage.querySelector<HTMLInputElement>("[data-round-door]");
  const swung = (): void => {
    if (!door) return;
    const degrees = door.valueAsNumber;
    turntable.openDoor(toRadians(degrees));
    door.setAttribute("aria-valuetext", say.roundDoor({ state: degrees === 0 ? "closed" : "open", degrees }));
  };
  door?.addEventListener("input", swung);
  swung();
}

function bindCheckbox(stage: HTMLElement, name: string, change: (on: boolean) => void): void {
  const box = stage.querySelector<HTMLInputElement>(`[data-round-${name}]`);
  box?.addEventListener("change", () => change(box.checked));
  if (box) change(box.checked);
}

/** Colour, number and name, so that no level is told by colour alone. */
function legendEntry(level: number, name: string): HTMLLIElement {
  const entry = document.createElement("li");
  const swatch = document.createElement("span");
  swatch.className = "round-swatch";
  swatch.style.backgroundColor = LEVEL_COLOURS[(level - 1) % LEVEL_COLOURS.length]!;
  entry.append(swatch, say.roundLevel({ level, name }));
  return entry;
}

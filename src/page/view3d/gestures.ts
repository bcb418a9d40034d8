import { toRadians } from "../../core/units/angle.ts";
import { moved, type Orbit } from "./orbit.ts";

/** What a gesture does: a change of the view, and whether the view should settle there (keys) or follow at once (a finger). */
export type Turner = (change: (orbit: Orbit) => Orbit, settle: boolean) => void;

const STEP = toRadians(10);
const NEARER = 1 / 1.15;
/** Half a turn for a drag of this many pixels. */
const HALF_TURN = 420;

/** Arrow keys turn and tilt, + and − zoom, 0 resets. True where the key was one of them. */
export function turnByKey(key: string, turner: Turner, reset: () => void): boolean {
  const changes: Readonly<Record<string, Parameters<typeof moved>[1]>> = {
    ArrowLeft: { turn: STEP },
    ArrowRight: { turn: -STEP },
    ArrowUp: { tilt: STEP },
    ArrowDown: { tilt: -STEP },
    "+": { factor: NEARER },
    "=": { factor: NEARER },
    "-": { factor: 1 / NEARER },
    "−": { factor: 1 / NEARER },
  };
  if (key === "0") {
    reset();
    return true;
  }
  const change = changes[key];
  if (!change) return false;
  turner((orbit) => moved(orbit, change), true);
  return true;
}

/** Dragging with one pointer turns and tilts, two pointers spread to zoom; the wheel zooms with Ctrl held, so that the page still scrolls. */
export function bindPointers(canvas: HTMLCanvasElement, turner: Turner): void {
  const places = new Map<number, { x: number; y: number }>();
  canvas.addEventListener("pointerdown", (event) => {
    canvas.setPointerCapture(event.pointerId);
    places.set(event.pointerId, { x: event.clientX, y: event.clientY });
  });
  for (const end of ["pointerup", "pointercancel"] as const)
    canvas.addEventListener(end, (event) => places.delete(event.pointerId));
  canvas.addEventListener("pointermove", (event) => {
    const before = places.get(event.pointerId);
    if (!before) return;
    const now = { x: event.clientX, y: event.clientY };
    const other = [...places].find(([id]) => id !== event.pointerId)?.[1];
    places.set(event.pointerId, now);
    if (other) {
      const spread = Math.hypot(before.x - other.x, before.y - other.y) / Math.hypot(now.x - other.x, now.y - other.y);
      if (Number.isFinite(spread)) turner((orbit) => moved(orbit, { factor: spread }), false);
      return;
    }
    const unit = Math.PI / HALF_TURN;
    turner((orbit) => moved(orbit, { turn: (before.x - now.x) * unit, tilt: (now.y - before.y) * unit * 0.7 }), true);
  });
  canvas.addEventListener(
    "wheel",
    (event) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      turner((orbit) => moved(orbit, { factor: Math.exp(event.deltaY / 300) }), true);
    },
    { passive: false },
  );
}

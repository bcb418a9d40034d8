import { PerspectiveCamera, Scene, WebGLRenderer } from "three";
import { toRadians } from "../../core/units/angle.ts";
import type { RoundData } from "../../output/data/round-data.ts";
import { makeBook } from "./book-model.ts";
import { makeLamp } from "./lamp.ts";
import { fitsWindow, isOwn } from "./opened-shape.ts";
import { FRONT, type Orbit, settled } from "./orbit.ts";
import { release } from "./release.ts";
import { makeSurroundings } from "./surroundings.ts";
import { makeWindow } from "./window-model.ts";

/** The drawn book, on a turntable. Nothing is drawn until something changes. */
export interface Turntable {
  /** Looks at the book from elsewhere: at once, or settling over the next frames. */
  readonly look: (wanted: Orbit, settle: boolean) => void;
  /** Opening between first and last leaf, radians. */
  readonly open: (opening: number) => void;
  /** How far the window's door stands open, radians; 0 is closed. */
  readonly openDoor: (angle: number) => void;
  readonly light: (on: boolean) => void;
  readonly colourLevels: (on: boolean) => void;
  readonly showWindow: (on: boolean) => void;
  readonly showMotifs: (on: boolean) => void;
  readonly dispose: () => void;
}

/** Vertical field of view, degrees: a long lens, so that the view from the front is near the front picture. */
const FIELD = 22;

/** Space left round the book, mm. */
const MARGIN = 20;

/** Sets the whole book on a turntable. @throws Error where WebGL 2 is missing */
export function makeTurntable(canvas: HTMLCanvasElement, data: RoundData): Turntable {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.setPixelRatio(Math.min(2, devicePixelRatio));
  renderer.shadowMap.enabled = true;
  const scene = new Scene();
  const camera = new PerspectiveCamera(FIELD);
  const surroundings = makeSurroundings(data.book);
  const book = makeBook(data);
  const lamp = data.light && makeLamp(data.light, data.book.leafHeight);
  const window = data.insert && makeWindow(data, data.insert);
  for (const part of [book, lamp, window]) if (part) surroundings.table.add(part.object);
  scene.add(surroundings.object);

  let orbit = FRONT;
  let wanted = FRONT;
  let opening = data.fit.opening;
  let shown = true;
  let frame = 0;
  let last: number | undefined;

  const draw = (now: number): void => {
    frame = 0;
    if (orbit !== wanted) orbit = settled(orbit, wanted, last === undefined ? 16 : Math.min(64, now - last));
    last = orbit === wanted ? undefined : now;
    surroundings.turn(orbit.turn);
    place(camera, orbit, data, opening);
    renderer.render(scene, camera);
    if (orbit !== wanted) request();
  };
  const request = (): void => {
    if (frame === 0) frame = requestAnimationFrame(draw);
  };
  const resize = (): void => {
    const { clientWidth, clientHeight } = canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    renderer.setSize(clientWidth, clientHeight, false);
    camera.aspect = clientWidth / clientHeight;
    request();
  };
  const changed =
    <T>(change: (value: T) => void) =>
    (value: T): void => {
      change(value);
      request();
    };
  const observer = new ResizeObserver(resize);
  observer.observe(canvas);
  canvas.addEventListener("webglcontextrestored", request);
  const open = (next: number): void => {
    opening = isOwn(data, next) ? data.fit.opening : next;
    book.open(opening);
    window?.open(opening);
    window?.show(shown && fitsWindow(data, opening));
  };
  open(opening);
  resize();

  return {
    look: (next, settle) => {
      wanted = next;
      if (!settle) orbit = next;
      request();
    },
    open: changed(open),
    openDoor: changed((angle) => window?.openDoor(angle)),
    light: changed((on) => {
      lamp?.light(on);
      surroundings.dim(on);
    }),
    colourLevels: changed(book.colourLevels),
    showWindow: changed((on) => {
      shown = on;
      open(opening);
    }),
    showMotifs: changed((on) => window?.showMotifs(on)),
    dispose: () => {
      cancelAnimationFrame(frame);
      observer.disconnect();
      canvas.removeEventListener("webglcontextrestored", request);
      release(scene);
      renderer.dispose();
      renderer.forceContextLoss();
    },
  };
}

/** Sets the camera so far off that the whole book shows at distance 1, also when it is opened wider than the kit wants. */
function place(camera: PerspectiveCamera, orbit: Orbit, data: RoundData, opening: number): void {
  const { leafHeight, leafWidth, square, blockThickness } = data.book;
  const widest = Math.min(Math.PI, Math.max(opening, data.fit.opening));
  const across = blockThickness / 2 + (leafWidth + square) * Math.sin(widest / 2) + MARGIN;
  const up = leafHeight / 2 + square + MARGIN;
  const lens = Math.tan(toRadians(FIELD) / 2);
  const reach = leafWidth / 2 + Math.max(up / lens, across / (lens * camera.aspect));
  const distance = reach * orbit.distance;
  const depth = 1.2 * Math.hypot(leafWidth, leafHeight, across);
  camera.near = Math.max(5, distance - depth);
  camera.far = distance + 3 * depth;
  camera.updateProjectionMatrix();
  camera.position.set(0, distance * Math.sin(orbit.tilt), distance * Math.cos(orbit.tilt));
  camera.lookAt(0, 0, 0);
}

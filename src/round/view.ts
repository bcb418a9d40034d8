import {
  BufferAttribute,
  BufferGeometry,
  type Material,
  Mesh,
  type Object3D,
  PerspectiveCamera,
  Scene,
  WebGLRenderer,
} from "three";
import { isOwn } from "./words.ts";
import { makeBook } from "./book-model.ts";
import { makeLamp } from "./lamp.ts";
import { FRONT, type Orbit, settled } from "./orbit.ts";
import type { RoundData } from "./round-data.ts";
import { lightRoom } from "./room.ts";
import { makeWindow } from "./window-model.ts";

/** The drawn book; every call shows at once or, where movement settles, over the next frames. */
export interface View {
  readonly look: (wanted: Orbit, settle: boolean) => void;
  /** Opening between first and last leaf, radians. */
  readonly open: (opening: number) => void;
  /** How far the window's door stands open, radians; 0 is closed. */
  readonly openDoor: (angle: number) => void;
  readonly light: (on: boolean) => void;
  readonly colourLevels: (on: boolean) => void;
  readonly showMotifs: (on: boolean) => void;
  readonly dispose: () => void;
}

/** Vertical field of view, degrees: a long lens, so that the front view is near the front picture. */
const FIELD = 24;

/** Sets the whole book on a turntable. Draws only when something has changed. @throws Error where WebGL 2 is missing */
export function makeView(canvas: HTMLCanvasElement, data: RoundData): View {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.setPixelRatio(Math.min(2, devicePixelRatio));
  renderer.shadowMap.enabled = true;
  const scene = new Scene();
  const camera = new PerspectiveCamera(FIELD, 1, 10, 4000);
  const book = makeBook(data);
  const lamp = data.light && makeLamp(data.light, data.book.leafHeight);
  const window = data.insert && makeWindow(data, data.insert);
  const room = lightRoom(data.book);
  const table = room.table;
  table.add(book.object);
  if (lamp) table.add(lamp.object);
  if (window) table.add(window.object);
  scene.add(room.object);

  let orbit = FRONT;
  let wanted = FRONT;
  let frame = 0;
  let before = 0;

  const draw = (now: number): void => {
    frame = 0;
    orbit = before === 0 ? wanted : settled(orbit, wanted, Math.min(64, now - before));
    place(camera, room, orbit, canvas, data);
    renderer.render(scene, camera);
    before = orbit === wanted ? 0 : now;
    if (orbit !== wanted) request();
  };
  const request = (): void => {
    if (frame === 0) frame = requestAnimationFrame(draw);
  };
  const fit = (): void => {
    const { clientWidth, clientHeight } = canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    renderer.setSize(clientWidth, clientHeight, false);
    camera.aspect = clientWidth / clientHeight;
    camera.updateProjectionMatrix();
    request();
  };
  const observer = new ResizeObserver(fit);
  observer.observe(canvas);
  canvas.addEventListener("webglcontextrestored", request);
  book.open(data.fit.opening);
  window?.open(data.fit.opening);
  lamp?.light(false);
  fit();

  return {
    look: (next, settle) => {
      if (before === 0) before = settle ? performance.now() : 0;
      if (!settle) before = 0;
      wanted = next;
      request();
    },
    open: (opening) => {
      const exact = isOwn(data, opening) ? data.fit.opening : opening;
      book.open(exact);
      window?.open(exact);
      request();
    },
    openDoor: (angle) => {
      window?.openDoor(angle);
      request();
    },
    light: (on) => {
      lamp?.light(on);
      room.dim(on);
      request();
    },
    colourLevels: (on) => {
      book.colourLevels(on);
      request();
    },
    showMotifs: (on) => {
      window?.showMotifs(on);
      request();
    },
    dispose: () => {
      cancelAnimationFrame(frame);
      observer.disconnect();
      canvas.removeEventListener("webglcontextrestored", request);
      scene.traverse(release);
      renderer.dispose();
      renderer.forceContextLoss();
    },
  };
}

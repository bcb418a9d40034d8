import { PerspectiveCamera, Scene, WebGLRenderer } from "three";
import type { RoundData } from "../../output/data/round-data.ts";
import { type BookModel, makeBook } from "./book-model.ts";
import { type Lamp, makeLamp } from "./lamp.ts";
import { FIELD_OF_VIEW, placeCamera } from "./lens.ts";
import { fitsWindow, isOwn } from "./opened-shape.ts";
import type { Orbit } from "./orbit.ts";
import { OrbitMotion } from "./orbit-motion.ts";
import { release } from "./release.ts";
import { makeSurroundings, type Surroundings } from "./surroundings.ts";
import { modelWindow, type WindowModel } from "./window-model.ts";

/** The whole book drawn on a turntable. Nothing is drawn until something changes. Angles radians. */
export class Turntable {
  #canvas: HTMLCanvasElement;
  #data: RoundData;
  #renderer: WebGLRenderer;
  #camera = new PerspectiveCamera(FIELD_OF_VIEW);
  #scene = new Scene();
  #surroundings: Surroundings;
  #book: BookModel;
  #lamp: Lamp | undefined;
  #window: WindowModel | undefined;
  #motion = new OrbitMotion();
  #opening: number;
  #windowWanted = true;
  /** The frame that is asked for; 0 where none is. */
  #frame = 0;
  #observer = new ResizeObserver(() => this.#resize());

  /** @throws Error where WebGL 2 is missing */
  constructor(canvas: HTMLCanvasElement, data: RoundData) {
    this.#canvas = canvas;
    this.#data = data;
    this.#renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
    this.#renderer.setPixelRatio(Math.min(2, devicePixelRatio));
    this.#renderer.shadowMap.enabled = true;
    this.#surroundings = makeSurroundings(data.book);
    this.#book = makeBook(data);
    this.#lamp = data.light && makeLamp(data.light, data.book.leafHeight);
    this.#window = data.insert && modelWindow(data, data.insert);
    for (const part of [this.#book, this.#lamp, this.#window]) if (part) this.#surroundings.table.add(part.object);
    this.#scene.add(this.#surroundings.object);
    this.#observer.observe(canvas);
    canvas.addEventListener("webglcontextrestored", this.#request);
    this.#opening = data.fit.opening;
    this.open(this.#opening);
    this.#resize();
  }

  /** Looks at the book from elsewhere: at once, or settling over the next frames. */
  look(wanted: Orbit, settle: boolean): void {
    this.#motion.look(wanted, settle);
    this.#request();
  }

  /** Opening between first and last leaf. */
  open(opening: number): void {
    this.#opening = isOwn(this.#data, opening) ? this.#data.fit.opening : opening;
    this.#book.open(this.#opening);
    this.#window?.open(this.#opening);
    this.#window?.show(this.#windowWanted && fitsWindow(this.#data, this.#opening));
    this.#request();
  }

  /** How far the window's door stands open; 0 is closed. */
  openDoor(angle: number): void {
    this.#window?.openDoor(angle);
    this.#request();
  }

  light(on: boolean): void {
    this.#lamp?.light(on);
    this.#surroundings.dim(on);
    this.#request();
  }

  colourLevels(on: boolean): void {
    this.#book.colourLevels(on);
    this.#request();
  }

  showWindow(on: boolean): void {
    this.#windowWanted = on;
    this.open(this.#opening);
  }

  showMotifs(on: boolean): void {
    this.#window?.showMotifs(on);
    this.#request();
  }

  dispose(): void {
    cancelAnimationFrame(this.#frame);
    this.#observer.disconnect();
    this.#canvas.removeEventListener("webglcontextrestored", this.#request);
    release(this.#scene);
    this.#renderer.dispose();
    this.#renderer.forceContextLoss();
  }

  #request = (): void => {
    if (this.#frame === 0) this.#frame = requestAnimationFrame((now) => this.#draw(now));
  };

  #draw(now: number): void {
    this.#frame = 0;
    const orbit = this.#motion.step(now);
    this.#surroundings.turn(orbit.turn);
    placeCamera(this.#camera, orbit, this.#data, this.#opening);
    this.#renderer.render(this.#scene, this.#camera);
    if (!this.#motion.rests) this.#request();
  }

  #resize(): void {
    const { clientWidth, clientHeight } = this.#canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    this.#renderer.setSize(clientWidth, clientHeight, false);
    this.#camera.aspect = clientWidth / clientHeight;
    this.#request();
  }
}

import { bench } from "./rooms/bench.ts";
import { classRoom } from "./rooms/class.ts";
import { corners } from "./rooms/corners.ts";
import { desk } from "./rooms/desk.ts";
import { diagrams } from "./rooms/diagrams.ts";
import { front } from "./rooms/front.ts";
import { here } from "./rooms/here.ts";
import { marks } from "./rooms/marks.ts";
import { sheets } from "./rooms/sheets.ts";
import { window } from "./rooms/window.ts";
import type { Scene } from "./scene.ts";

/** Every drawing of the gallery, room by room. */
export const SCENES: readonly Scene[] = [
  ...front,
  ...here,
  ...diagrams,
  ...bench,
  ...sheets,
  ...window,
  ...classRoom,
  ...marks,
  ...desk,
  ...corners,
];

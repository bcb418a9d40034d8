import { type Area, outlinesOf } from "../../../core/geometry/area.ts";
import { type Box, boxOf } from "../../../core/geometry/box.ts";
import type { Point } from "../../../core/geometry/point.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { Pocket } from "../../../core/light/light.ts";
import { curveOf } from "../../../core/pattern/fan-of.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { type MotifPart, setOutlines } from "../../../core/window/motif.ts";
import { toFront } from "../../../core/window/panel.ts";
import * as say from "../../../words/messages.ts";
import { type Figure, figureOf } from "../figure.ts";
import { lookedAt, motifLookedAt } from "../looked-at.ts";
import { boxPath } from "../path.ts";
import { num, tag } from "../svg-text.ts";
import { closedWindow } from "./window.ts";

/** Free room round the window, mm. */
const PAD = 6;

/** The dark room, paper in the light and before it, the light and its shine. */
const ROOM = "#17151b";
const GLOWING = "#dd9638";
const DIM = ["#3c332d", "#5a4a3a", "#75603f"] as const;
const LIGHT = "#fff3cf";
const SHINE = "#ffe2a0";

/** Rings of shine, in shares of the widest; so many and so faint that no edge of one is seen. */
const RINGS = Array.from({ length: 20 }, (_, i) => 1 - 0.038 * i);
const FAINT = "0.03";

/** How far outlines may lie from the true ones in so small a figure, mm. */
const ROUGH = 0.16;

/** The window closed with its light on, as it is seen in a dark room. Undefined without a light or a window. */
export function litWindow(kit: Kit, pattern: Pattern): Figure | undefined {
  const { pocket, window } = pattern;
  if (!pocket || !window) return undefined;
  const curve = curveOf(pattern);
  const outer = outlinesOf(toFront(window.frame.outlines, curve, window.wish.panel)).outer;
  const box = boxOf(outer);
  const field = {
    left: box.left - PAD,
    top: box.top - PAD,
    width: box.right - box.left + 2 * PAD,
    height: box.bottom - box.top + 2 * PAD,
  };
  const room = boxPath(field.left, field.top, field.width, field.height) + outline(outer);
  return figureOf(
    field,
    say.drawLitWindow({ motifs: window.motifs.length }),
    [
      paper(kit, pattern, pocket),
      shine(pocket, box),
      tag("path", { d: room, fill: ROOM, "fill-rule": "evenodd" }),
      closedWindow(window, curve, "lit", { outline, motif: motifAsSeen }),
    ].join(""),
  );
}

/** A motif as it stands in its own frame, moved and drawn narrower: so small a piece is seen as if it were flat. */
function motifAsSeen(motif: MotifPart, front: (area: Area) => Area): { d: string; transform: string } {
  const [own, seen] = [boxOf(motif.outlines), boxOf(front(setOutlines(motif)))];
  const narrower = (seen.right - seen.left) / (own.right - own.left);
  const transform = `translate(${num(seen.left - narrower * own.left)} ${num(seen.top - own.top)}) scale(${num(narrower, 3)} 1)`;
  return { d: motifLookedAt(motif), transform };
}

function outline(rings: Area): string {
  return lookedAt(rings, ROUGH);
}

/** The picture's levels behind the glazing: bright where the light stands and deeper, dimmer the prouder. */
function paper({ picture }: Kit, pattern: Pattern, { light }: Pocket): string {
  const { fit } = pattern;
  const curve = curveOf(pattern);
  const place = ([x, y]: Point): Point => [
    curve.atAcross((x / picture.width) * fit.width).x,
    fit.head + (y / picture.height) * fit.height,
  ];
  const toneOf = (level: number): string => (level >= light.level ? GLOWING : DIM[Math.min(level, DIM.length) - 1]!);
  const [left, right] = [place([0, 0])[0], place([picture.width, 0])[0]];
  const ground = boxPath(left, fit.head, right - left, fit.height);
  return [
    tag("path", { d: ground, fill: toneOf(picture.background) }),
    ...picture.shapes.map(({ level, rings, rule }) =>
      tag("path", {
        d: outline(rings.map((ring) => ring.map(place))),
        fill: toneOf(level),
        "fill-rule": rule,
      }),
    ),
  ].join("");
}

/** The light and rings of shine round it, as far as the nearest side of the window. */
function shine({ centre, light, floor }: Pocket, box: Box): string {
  const [width, height] = [light.diameter, light.height];
  const y = floor - height / 2;
  const reach = Math.min(y - box.top, box.bottom - y, centre.x - box.left, box.right - centre.x);
  return [
    tag(
      "g",
      { fill: SHINE, "fill-opacity": FAINT },
      RINGS.map((share) => tag("circle", { cx: centre.x, cy: y, r: num(share * reach, 1) })).join(""),
    ),
    tag("rect", { x: centre.x - width / 2, y: floor - height, width, height, rx: width * 0.16, fill: LIGHT }),
  ].join("");
}

import { boxOf } from "../../../core/geometry/area.ts";
import type { Ring } from "../../../core/geometry/point.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { Insert } from "../../../core/window/insert.ts";
import type { Part } from "../../../core/window/part.ts";
import { formatSize } from "../../../words/lengths.ts";
import type { Figure } from "../pocket-figure.ts";
import { num, tag } from "../svg-text.ts";
import { ACETATE, type At, CARD, CUT, diagram, type Look, NO_LINE, PAPER, POSITION, SMALL, THIN } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

/** Where the button and the closing edge are, mm; `out` points away from the hinge. */
interface Closing {
  readonly button: readonly [number, number];
  /** From the button to the rim, and from the rim to the tab's hole and end. */
  readonly rim: number;
  readonly hole: number;
  readonly end: number;
  readonly halfTab: number;
  readonly out: 1 | -1;
}

const FACE = { top: 7, foot: 45, button: 26 };
const BUTTON = 4.2;
const STRING: Look = { fill: "none", stroke: "#000", "stroke-width": "0.5" };

/** What keeps the door shut: the tab from behind the base frame, the button on the door, the loop of string. Undefined without a window. */
export function closing(kit: Kit, pattern: Pattern): Figure | undefined {
  const { insert } = pattern;
  if (!insert) return undefined;
  const place = closingOf(insert);
  const string = formatSize(insert.stringLength, kit.units);
  const label = `Closing the door. From the front: a card tab, glued behind the base frame, stands out beyond the rim opposite the hinge; the button is glued on the door; a loop of ${string} of string goes through the tab's hole and round the button. Below, the same from the head: front tips of the book, tab, base frame, door with button. Thickness is exaggerated.`;
  const scale = Math.min(1.7, 30 / (place.rim + place.end));
  const pen = penFor(place.out === 1 ? "ltr" : "rtl");
  return diagram(72, label, [
    faceView(pen, insert, place, scale),
    pen.words([3, 4], "from the front", { bold: true }),
    pen.words([41, 4], `string ${string}`),
    sectionView(pen, place, scale),
    pen.words([3, 51.5], "from the head", { bold: true }),
  ]);
}

function closingOf(insert: Insert): Closing {
  const door = partOf(insert, "door");
  const tab = partOf(insert, "closure tab");
  const base = partOf(insert, "base frame");
  const cross = door.marks.find((mark) => mark.label === "button")!.line;
  const button = [(cross[0]![0] + cross[1]![0]) / 2, cross[0]![1]] as const;
  const out = insert.wish.hinge === "left" ? 1 : -1;
  const rim = Math.max(...crossings(base.outlines, button[1]).map((x) => (x - button[0]) * out));
  const glued = tab.marks[0]!.line[0]![0];
  const hole = boxOf(tab.outlines.slice(1));
  const box = boxOf(tab.outlines);
  return {
    button,
    out,
    rim,
    hole: (hole.left + hole.right) / 2 - glued,
    end: box.right - glued,
    halfTab: (box.bottom - box.top) / 2,
  };
}

function partOf(insert: Insert, name: string): Part {
  return insert.parts.find((part) => part.name === name)!;
}

function crossings(rings: readonly Ring[], y: number): number[] {
  return rings
    .flatMap((ring) => ring.map((point, i) => [point, ring[(i + 1) % ring.length]!] as const))
    .filter(([a, b]) => a[1] <= y !== b[1] <= y)
    .map(([a, b]) => a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]));
}

function faceView(pen: Pen, insert: Insert, place: Closing, scale: number): string {
  const x = (mm: number): number => FACE.button + mm * scale;
  const y = (mm: number): number => (FACE.top + FACE.foot) / 2 + mm * scale;
  const half = place.halfTab;
  const hole: At = [x(place.rim + place.hole), y(0)];
  const tab = [
    pen.box([x(place.rim - 12), y(-half)], [x(place.rim + place.end - half), y(half)], CARD, POSITION),
    roundTab(pen, x, y, place),
    pen.dot(hole, 1.5 * scale, "#ffffff"),
  ];
  const knot: At = [hole[0] + 2.6, hole[1] + 3.2];
  return [
    ...tab,
    doorEdge(pen, insert, place, scale),
    pen.dot([x(0), y(0)], BUTTON, PAPER),
    ...[-0.9, 0.9].map((dx) => pen.dot([x(0) + dx, y(0)], 0.35, "#000")),
    pen.line([hole, [x(0), y(0) - BUTTON - 0.3]], STRING),
    pen.line([hole, [x(0), y(0) + BUTTON + 0.3]], STRING),
    roundButton(pen, x(0), y(0)),
    pen.line([hole, knot], STRING),
    pen.dot(knot, 0.7, "#000"),
    pen.leader([
      [45, 5],
      [(x(0) + hole[0]) / 2 + 2, y(0) - BUTTON * 0.42],
    ]),
    pen.words([x(0), FACE.foot - 2.4], "button", { anchor: "middle" }),
    pen.leader([
      [x(0), FACE.foot - 5.2],
      [x(0), y(0) + 2.4],
    ]),
    pen.words([x(0), FACE.top + 5], "door", { anchor: "middle" }),
    pen.words([79, FACE.foot - 4.6], "tab, glued", { anchor: "end" }),
    pen.words([79, FACE.foot - 1.2], "behind the base frame", { anchor: "end", size: SMALL }),
    pen.leader([
      [79 - 16, FACE.foot - 5.6],
      [x(place.rim + 2.4), y(half * 0.6)],
    ]),
  ].join("");
}

function roundTab(pen: Pen, x: (mm: number) => number, y: (mm: number) => number, place: Closing): string {
  const half = place.halfTab;
  const middle = place.rim + place.end - half;
  const arc: At[] = Array.from({ length: 25 }, (_, i) => {
    const angle = -Math.PI / 2 + (Math.PI * i) / 24;
    return [x(middle + half * Math.cos(angle)), y(half * Math.sin(angle))] as const;
  });
  return pen.shape([[x(place.rim), y(-half)], ...arc, [x(place.rim), y(half)]], CARD, CUT);
}

/** The loop round the button, on the side of the hinge. */
function roundButton(pen: Pen, x: number, y: number): string {
  const arc: At[] = Array.from({ length: 21 }, (_, i) => {
    const angle = Math.PI / 2 + (Math.PI * i) / 20;
    return [x + (BUTTON + 0.3) * Math.cos(angle), y + (BUTTON + 0.3) * Math.sin(angle)] as const;
  });
  return pen.line(arc, STRING);
}

/** The door as it is cut, clipped to what lies near the button. */
function doorEdge(pen: Pen, insert: Insert, { button, out }: Closing, scale: number): string {
  const rings = partOf(insert, "door").outlines;
  const [left, top] = [3, FACE.top];
  const [width, height] = [74, FACE.foot - FACE.top];
  const d = (ring: Ring): string =>
    `M${ring
      .map(([px, py]) =>
        pen.place([
          FACE.button + (px - button[0]) * out * scale,
          (FACE.top + FACE.foot) / 2 + (py - button[1]) * scale,
        ]),
      )
      .map(([x, y]) => `${num(x)} ${num(y)}`)
      .join("L")}Z`;
  const sorted = [...rings].sort((a, b) => boxOf([b]).right - boxOf([b]).left - (boxOf([a]).right - boxOf([a]).left));
  return tag(
    "svg",
    { x: left, y: top, width, height, viewBox: `${left} ${top} ${width} ${height}` },
    tag("path", { d: d(sorted[0]!), fill: ACETATE, ...NO_LINE }) +
      tag("path", { d: rings.map(d).join(""), ...CUT, fill: CARD, "fill-rule": "evenodd" }),
  );
}

const LAYERS = { tips: 54.5, tab: 58.8, frame: 61.2, door: 64.8, thick: 1.3 };

/** From the head, the viewer at the foot. */
function sectionView(pen: Pen, place: Closing, scale: number): string {
  const x = (mm: number): number => FACE.button + mm * scale;
  const rim = x(place.rim);
  const end = x(place.rim + place.end);
  const hole = x(place.rim + place.hole);
  const { tips, tab, frame, door, thick } = LAYERS;
  const layer = (from: number, to: number, y: number, fill = CARD): string =>
    pen.box([from, y], [to, y + thick], fill, THIN);
  const front = Array.from({ length: 12 }, (_, i) => rim - 1 - i * 2);
  return [
    ...front.map((at) => pen.segment(at, tips, at, tab - 0.2, THIN)),
    layer(x(place.rim - 12), end, tab),
    layer(x(-place.rim), rim, frame),
    layer(x(-place.rim), rim, door),
    pen.box([x(0) - BUTTON, door + thick], [x(0) + BUTTON, door + thick + 1.4], PAPER, THIN),
    pen.line(
      [
        [hole, tab + thick / 2],
        [rim + 1.2, door + 2],
        [x(0) + BUTTON + 0.4, door + thick + 0.7],
      ],
      STRING,
    ),
    pen.dot([hole, tab + thick / 2], 0.5, "#000"),
    pen.words([end + 2, tab + 1.8], "tab"),
    pen.words([x(-place.rim) - 1.4, frame + 1.7], "base frame", { anchor: "end" }),
    pen.words([x(-place.rim) - 1.4, door + 1.9], "door", { anchor: "end" }),
  ].join("");
}

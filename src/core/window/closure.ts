import type { Area } from "../geometry/area.ts";
import { boxOf } from "../geometry/box.ts";
import { levelCrossings } from "../geometry/crossings.ts";
import type { Point, Ring } from "../geometry/point.ts";
import type { Line, Part, PositionMark } from "./part.ts";

/** What keeps the door shut: a card tab on the base frame, a button on the door, a loop of string round it. */
export interface Closure {
  readonly tab: Part;
  readonly baseMarks: readonly PositionMark[];
  readonly doorMarks: readonly PositionMark[];
  readonly stringLength: number;
}

const TAB_LENGTH = 26;
const TAB_WIDTH = 14;
const TAB_GLUE = 12;
const HOLE = 1.5;
const CROSS = 3;
/** String for the knot and the hand, mm. */
const KNOT = 90;

/** Sits opposite the hinge on the middle height: the tab is glued behind the base frame there, the button in the middle of the door's card. */
export function closureOf(frame: Area, hinge: "left" | "right", score: Line): Closure {
  const box = boxOf(frame);
  const middle = (box.top + box.bottom) / 2;
  const [near, far] = cardOpposite(frame, middle, score[0]![0]);
  const button: Point = [(near + far) / 2, middle];
  const outward = hinge === "left" ? 1 : -1;
  const glue: Line = [
    [far - outward * 4, middle - TAB_WIDTH / 2],
    [far - outward * 4, middle + TAB_WIDTH / 2],
  ];
  const reach = TAB_LENGTH - TAB_GLUE - 6 + Math.abs(far - button[0]);
  return {
    tab: tabPart(),
    baseMarks: [{ line: glue, kind: "tab-behind" }],
    doorMarks: [
      {
        line: [
          [button[0] - CROSS, middle],
          [button[0] + CROSS, middle],
        ],
        kind: "button",
      },
      {
        line: [
          [button[0], middle - CROSS],
          [button[0], middle + CROSS],
        ],
        kind: undefined,
      },
    ],
    stringLength: 2 * reach + KNOT,
  };
}

/** The card between hole and edge on the side away from the hinge, as x of its inner and outer edge. */
function cardOpposite(frame: Area, y: number, hingeX: number): [number, number] {
  const xs = levelCrossings(frame, y).sort((a, b) => Math.abs(b - hingeX) - Math.abs(a - hingeX));
  return [xs[1]!, xs[0]!];
}

function tabPart(): Part {
  const half = TAB_WIDTH / 2;
  const round: Point[] = Array.from({ length: 41 }, (_, i) => {
    const angle = -Math.PI / 2 + (Math.PI * i) / 40;
    return [TAB_LENGTH - half + half * Math.cos(angle), half + half * Math.sin(angle)] as const;
  });
  const hole: Ring = Array.from(
    { length: 32 },
    (_, i) =>
      [
        TAB_LENGTH - half + HOLE * Math.cos((-2 * Math.PI * i) / 32),
        half + HOLE * Math.sin((-2 * Math.PI * i) / 32),
      ] as const,
  );
  return {
    id: "closure-tab",
    kind: "closure-tab",
    material: "card",
    count: 1,
    frame: "own",
    outlines: [[[0, 0], ...round, [0, TAB_WIDTH]], hole],
    scores: [],
    marks: [
      {
        line: [
          [TAB_GLUE, 0],
          [TAB_GLUE, TAB_WIDTH],
        ],
        kind: "glue-behind-frame",
      },
    ],
  };
}

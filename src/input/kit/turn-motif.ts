import type { Area } from "../../core/geometry/area.ts";
import { boxOf } from "../../core/geometry/box.ts";
import { tidy } from "../../core/units/length.ts";
import type { MotifWish, WindowLength } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import type { DrawnMotif } from "./drawn-motif.ts";
import { inDigits } from "./lightened.ts";
import type { StatedMotif } from "./schema-motif.ts";

/** A motif's area on the window, and the size of its box there. */
type TurnedMotif = Pick<MotifWish, "area" | "width" | "height">;

/** What each drawn motif was turned to last: who changes something else of its kit has it stated again and again. */
const latest = new WeakMap<DrawnMotif, { readonly asked: string; readonly made: TurnedMotif }>();

/** A motif as it stands on the window: mirrored, turned, and with the size of its box there. @throws ProblemError where that depends on the frame */
export function turnMotif(drawn: DrawnMotif, stated: StatedMotif, at: FieldPath): TurnedMotif {
  const { width, height, turn, mirror } = stated;
  const asked = JSON.stringify([width, height, turn, mirror]);
  const known = latest.get(drawn);
  if (known?.asked === asked) return known.made;
  const made = turnedNow(drawn, stated, at);
  latest.set(drawn, { asked, made });
  return made;
}

function turnedNow(drawn: DrawnMotif, stated: StatedMotif, at: FieldPath): TurnedMotif {
  const { size } = drawn;
  const { width, height, turn } = stated;
  const bothInMm = width && height && "mm" in width && "mm" in height;
  if (width && height && !bothInMm && turn % 180 !== 0) {
    const advice = { given: say.motifTurnedShares(), allowed: say.motifTurnedSize() };
    throw problem([...at, "turn"], { ...advice, remedy: say.motifSizeInMm() });
  }
  const factors = bothInMm ? [width.mm / size.width, height.mm / size.height] : [1, 1];
  const area = inDigits(turned(stretched(drawn.area, factors as [number, number]), stated));
  const box = boxOf(area);
  const [across, down] = [box.right - box.left, box.bottom - box.top];
  if (bothInMm) return { area, width: times({ mm: across }, 1), height: times({ mm: down }, 1) };
  return {
    area,
    width: width && times(width, across / size.width),
    height: height && times(height, down / size.height),
  };
}

function times(length: WindowLength, factor: number): WindowLength {
  return "mm" in length ? { mm: tidy(length.mm * factor, 4) } : { share: tidy(length.share * factor, 6) };
}

function stretched(area: Area, [across, down]: readonly [number, number]): Area {
  if (across === 1 && down === 1) return area;
  return area.map((ring) => ring.map(([x, y]) => [x * across, y * down] as const));
}

/** An area mirrored left to right, and then turned clockwise. */
function turned(area: Area, { turn, mirror }: Pick<StatedMotif, "turn" | "mirror">): Area {
  if (turn === 0 && !mirror) return area;
  const angle = (turn / 180) * Math.PI;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const rings = area.map((ring) =>
    ring.map(([x, y]) => {
      const across = mirror ? -x : x;
      return [across * cos - y * sin, across * sin + y * cos] as const;
    }),
  );
  return mirror ? rings.map((ring) => ring.toReversed()) : rings;
}

import { type Affine, compose, IDENTITY, translation } from "../../core/geometry/affine.ts";
import { toRadians } from "../../core/units/angle.ts";
import * as say from "../../words/messages.ts";
import { parseNumberList } from "./number-list.ts";
import { quoted, ValueError } from "./picture-error.ts";

const FUNCTION = /[\s,]*([A-Za-z]+)\s*\(([^()]*)\)/y;

interface TransformFunction {
  /** How many numbers it takes. */
  readonly counts: readonly number[];
  readonly build: (numbers: readonly number[]) => Affine;
}

const FUNCTIONS: Readonly<Record<string, TransformFunction>> = {
  matrix: { counts: [6], build: ([a, b, c, d, e, f]) => [a!, b!, c!, d!, e!, f!] },
  translate: { counts: [1, 2], build: ([x, y]) => translation(x!, y ?? 0) },
  scale: { counts: [1, 2], build: ([x, y]) => [x!, 0, 0, y ?? x!, 0, 0] },
  rotate: { counts: [1, 3], build: ([angle, x, y]) => rotation(toRadians(angle!), x ?? 0, y ?? 0) },
  skewX: { counts: [1], build: ([angle]) => [1, 0, Math.tan(toRadians(angle!)), 1, 0, 0] },
  skewY: { counts: [1], build: ([angle]) => [1, Math.tan(toRadians(angle!)), 0, 1, 0, 0] },
};

/**
 * The map of a `transform` attribute; the last function in the list acts first.
 * Source: CSS Transforms 1, "SVG transform attribute syntax": plain numbers, angles in degrees.
 *
 * @throws ValueError for an unknown function, a wrong count of numbers or anything left over
 */
export function parseTransform(text: string): Affine {
  const list = text.trim();
  if (list === "none") return IDENTITY;
  let map = IDENTITY;
  let at = 0;
  while (at < list.length) {
    FUNCTION.lastIndex = at;
    const found = FUNCTION.exec(list);
    if (found === null) {
      throw new ValueError((what) =>
        say.pictureTransformRest({ what, value: quoted(text), found: quoted(list.slice(at)) }),
      );
    }
    map = compose(map, buildFunction(found[1]!, found[2]!));
    at = FUNCTION.lastIndex;
  }
  return map;
}

function buildFunction(name: string, inside: string): Affine {
  const known = Object.hasOwn(FUNCTIONS, name) ? FUNCTIONS[name] : undefined;
  if (known === undefined) {
    const names = Object.keys(FUNCTIONS).join(", ");
    throw new ValueError((what) => say.pictureNoTransform({ what, value: quoted(`${name}()`), names }));
  }
  const numbers = parseNumberList(inside);
  if (!known.counts.includes(numbers.length)) {
    const [count, more] = known.counts;
    const value = quoted(`${name}(${inside})`);
    throw new ValueError((what) =>
      more === undefined
        ? say.pictureTransformNumber({ what, value, count: count! })
        : say.pictureTransformNumbers({ what, value, count: count!, more }),
    );
  }
  return known.build(numbers);
}

function rotation(angle: number, x: number, y: number): Affine {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return compose(translation(x, y), compose([cos, sin, -sin, cos, 0, 0], translation(-x, -y)));
}

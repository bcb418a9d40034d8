import { type Affine, compose, IDENTITY, translation } from "../../core/geometry/affine.ts";
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
  rotate: { counts: [1, 3], build: ([angle, x, y]) => rotation(radians(angle!), x ?? 0, y ?? 0) },
  skewX: { counts: [1], build: ([angle]) => [1, 0, Math.tan(radians(angle!)), 1, 0, 0] },
  skewY: { counts: [1], build: ([angle]) => [1, Math.tan(radians(angle!)), 0, 1, 0, 0] },
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
      throw new ValueError(
        `${quoted(text)} has ${quoted(list.slice(at))} where a transform such as rotate(30) belongs`,
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
    throw new ValueError(`${quoted(`${name}()`)} is no transform: use ${Object.keys(FUNCTIONS).join(", ")}`);
  }
  const numbers = parseNumberList(inside);
  if (!known.counts.includes(numbers.length)) {
    throw new ValueError(`${quoted(`${name}(${inside})`)} takes ${known.counts.join(" or ")} numbers`);
  }
  return known.build(numbers);
}

function rotation(angle: number, x: number, y: number): Affine {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return compose(translation(x, y), compose([cos, sin, -sin, cos, 0, 0], translation(-x, -y)));
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

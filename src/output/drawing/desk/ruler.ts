import { type Graduation, graduations } from "../../../core/units/graduations.ts";
import { MM_PER_INCH, type UnitSystem } from "../../../core/units/length.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import { levelPath, uprightPath } from "../path.ts";
import { tag, text } from "../svg-text.ts";

/** Lengths of a ruler's lines, by their rank, as shares of its breadth. */
const LINES = [0.42, 0.32, 0.2, 0.14, 0.1, 0.07];

/** Letters of a ruler, as a share of its breadth. */
const LETTERS = 0.3;

/** A strip of wood with a ruler's lines along one edge. Lengths mm. */
interface Ruler {
  readonly units: UnitSystem;
  readonly length: number;
  readonly breadth: number;
}

/** An upright ruler: zero at the top, its lines at the right edge. */
export function uprightRuler({ units, length, breadth }: Ruler): string {
  const lines = linesOf(units, length);
  const d = lines.map((line) => {
    const long = longOf(line, breadth);
    return levelPath([breadth - long, line.at], long);
  });
  const size = LETTERS * breadth;
  const figures = lines.filter(isNumbered(units)).map(({ at }) =>
    text(breadth * 0.5, Math.min(length - 0.5, Math.max(size, at + 0.36 * size)), figureOf(at, units), {
      "font-size": size,
      "text-anchor": "end",
      fill: "#3b2a16",
    }),
  );
  return drawn(d) + figures.join("");
}

/** A level ruler above a leaf, its lines at the lower edge; zero is at the fore-edge, on the right or on the left. */
export function levelRuler({ units, length, breadth }: Ruler, zero: "left" | "right"): string {
  const across = (at: number): number => (zero === "left" ? at : length - at);
  const lines = linesOf(units, length);
  const d = lines.map((line) => {
    const long = longOf(line, breadth);
    return uprightPath([across(line.at), breadth - long], long);
  });
  return drawn(d);
}

function drawn(d: readonly string[]): string {
  return tag("path", { d: d.join(""), stroke: "#3b2a16", "stroke-width": 0.22, fill: "none" });
}

/** Lines as fine as are still told apart on a screen. */
function linesOf(units: UnitSystem, length: number): Graduation[] {
  return graduations(units, units === "mm" ? rulerStep("mm", "plain") : MM_PER_INCH / 8, 0, length);
}

function longOf({ rank }: Graduation, breadth: number): number {
  return LINES[Math.max(0, rank)]! * breadth;
}

/** Whole centimetres, every second of them, or whole inches carry a figure. */
function isNumbered(units: UnitSystem): (line: Graduation) => boolean {
  return ({ at, rank }) => rank === 0 && (units === "in" || Math.round(at) % 20 === 0);
}

function figureOf(at: number, units: UnitSystem): string {
  return String(Math.round(units === "mm" ? at : at / MM_PER_INCH));
}

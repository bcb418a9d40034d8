import { caliper } from "../book/book.ts";
import { type Fan, leafAngle, leafRoot, leafTip } from "../fan/fan.ts";
import type { Pattern } from "../pattern/pattern.ts";
import type { Span } from "../spans/span.ts";
import { escapeXml, num, tag } from "./svg-text.ts";
import { insideTone, paperTone } from "./tone.ts";

/** A leaf as the eye meets it from the front: outer leaves first, inner ones over them. */
interface DrawnLeaf {
  readonly j: number;
  readonly spans: readonly Span[];
}

/** Cloth of the boards, from the kit's slug, so that a catalogue is not all of one colour. */
const CLOTHS = ["#24505a", "#7a3b34", "#3d4a6b", "#4f5d3a", "#6a4a62"];

/**
 * The finished book seen from the front at the fit's opening, drawn from the computed leaves: each folded tip, the faces
 * behind it that a deeper neighbour leaves open, and the boards. Units of the drawing are mm.
 */
export function frontPicture(pattern: Pattern, slug: string, title: string): string {
  const fan = fanOf(pattern);
  const { book, fit } = pattern;
  const reach = fit.boardWidth / 2 + 3;
  const margin = book.square + 4;
  const height = book.leafHeight + 2 * margin;
  const label = `${title}: the opened book from the front, ${pattern.levels.length} levels, ${pattern.leaves.length} folded leaves`;
  const body = [
    boards(pattern, fan, cloth(slug)),
    ...drawnLeaves(pattern, fan).map((leaf) => drawLeaf(pattern, fan, leaf)),
  ].join("");
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${num(2 * reach)}mm" height="${num(height)}mm" viewBox="${num(-reach)} ${num(-margin)} ${num(2 * reach)} ${num(height)}" role="img">`,
    `<title>${escapeXml(label)}</title>`,
    `<defs><linearGradient id="drop" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="#3a2410" stop-opacity=".5"/><stop offset="1" stop-color="#3a2410" stop-opacity="0"/></linearGradient></defs>`,
    body,
    "</svg>\n",
  ].join("");
}

/** The fan of a computed pattern. */
export function fanOf(pattern: Pattern): Fan {
  const { book, fit } = pattern;
  return {
    leaves: book.leaves,
    leafWidth: book.leafWidth,
    blockThickness: book.blockThickness,
    opening: fit.opening,
    spine: fit.spine,
    direction: book.direction,
  };
}

function cloth(slug: string): string {
  const sum = [...slug].reduce((total, letter) => total + letter.charCodeAt(0), 0);
  return CLOTHS[sum % CLOTHS.length]!;
}

function boards(pattern: Pattern, fan: Fan, colour: string): string {
  const { book } = pattern;
  const half = book.blockThickness / 2 + book.boardThickness;
  const tip = half + (book.leafWidth + book.square) * Math.sin(Math.min(fan.opening, Math.PI) / 2);
  const top = -book.square;
  const height = book.leafHeight + 2 * book.square;
  return [
    tag("rect", { x: -tip, y: top, width: 2 * tip, height, rx: 1, fill: colour }),
    tag("rect", { x: -tip, y: top, width: book.boardThickness * 0.6, height, fill: "#ffffff", "fill-opacity": "0.18" }),
    tag("rect", {
      x: tip - book.boardThickness * 0.6,
      y: top,
      width: book.boardThickness * 0.6,
      height,
      fill: "#000000",
      "fill-opacity": "0.22",
    }),
  ].join("");
}

function drawnLeaves(pattern: Pattern, fan: Fan): DrawnLeaf[] {
  const folded = new Map(pattern.leaves.map((leaf) => [leaf.leaf - 1, leaf.spans]));
  const leaves = Array.from({ length: pattern.book.leaves }, (_, j) => ({ j, spans: folded.get(j) ?? [] }));
  return leaves
    .filter((leaf) => !pattern.lostLeaves.includes(leaf.j + 1))
    .sort((a, b) => Math.abs(leafAngle(fan, b.j)) - Math.abs(leafAngle(fan, a.j)));
}

/** One leaf: its faces toward the spine, its folded tips, and the shadow that a prouder span above throws on a deeper one. */
function drawLeaf(pattern: Pattern, fan: Fan, { j, spans }: DrawnLeaf): string {
  const angle = leafAngle(fan, j);
  const root = leafRoot(fan, j).x;
  const inward = angle < 0 ? 1 : -1;
  const deepest = pattern.levels.at(-1)!.depth;
  const front = pattern.levels[0]!.depth;
  const grain = j % 2 === 0 ? 1 : 0.965;
  const light = (0.94 + 0.07 * Math.cos(angle + 0.5)) * grain;
  const whole = spans.length > 0 ? spans : [{ from: 0, to: pattern.book.leafHeight, level: 0 }];
  const parts = whole.map((span, i) => {
    const depth = span.level === 0 ? 0 : pattern.levels[span.level - 1]!.depth;
    const share = Math.max(0, (depth - front) / Math.max(1, deepest - front));
    const tip = leafTip(fan, j, depth).x;
    const edge = Math.max(0.25, caliper(pattern.book) * 2.6, Math.abs(pitch(pattern, fan, j, depth)));
    const face = rect(tip, root, span, insideTone(share, 0.9 * light));
    const fold = rect(tip, tip + inward * edge, span, paperTone(share, light));
    const crease = rect(tip + inward * edge * 0.74, tip + inward * edge * 1.02, span, paperTone(share, 0.89 * light));
    return face + fold + crease + dropShadow(pattern, whole[i - 1], span, depth, tip, inward * edge);
  });
  return parts.join("");
}

function dropShadow(
  pattern: Pattern,
  above: Span | undefined,
  span: Span,
  depth: number,
  tip: number,
  width: number,
): string {
  if (!above || above.level >= span.level || above.level === 0) return "";
  const length = Math.min(span.to - span.from, (depth - pattern.levels[above.level - 1]!.depth) * 0.45);
  return rect(tip, tip + width, { from: span.from, to: span.from + length, level: 0 }, "url(#drop)");
}

function pitch(pattern: Pattern, fan: Fan, j: number, depth: number): number {
  const other = j + 1 < pattern.book.leaves ? j + 1 : j - 1;
  return leafTip(fan, other, depth).x - leafTip(fan, j, depth).x;
}

function rect(a: number, b: number, span: Span, fill: string): string {
  const x = Math.min(a, b);
  return `<path d="M${num(x)} ${num(span.from)}h${num(Math.abs(b - a))}v${num(span.to - span.from)}h${num(-Math.abs(b - a))}z" fill="${fill}"/>`;
}

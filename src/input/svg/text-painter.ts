import type { Element, Node } from "@xmldom/xmldom";
import { mapPoint } from "../../core/geometry/affine.ts";
import * as say from "../../words/messages.ts";
import { atLine, lineOf, readAttribute } from "./attribute.ts";
import { type Cascade, computedStyle } from "./cascade.ts";
import type { Gathered } from "./gathered.ts";
import type { LetterStyle, Letters, SetWords } from "./letters.ts";
import { paintOf } from "./paint.ts";
import { hasArea } from "./path-outline.ts";
import { PictureError } from "./picture-error.ts";
import type { PictureReport } from "./picture-report.ts";
import type { Scope } from "./scope.ts";
import type { Canvas } from "./shape-painter.ts";
import type { Style } from "./style-property.ts";
import { parseSvgLength } from "./svg-length.ts";

/** What there is to set words with. */
export interface Setting {
  readonly canvas: Canvas;
  readonly gathered: Gathered;
  readonly cascade: Cascade;
  readonly letters: Letters | undefined;
  readonly report: PictureReport;
}

/** Attributes that place single letters, which only the program that wrote them does alike. */
const LETTER_BY_LETTER = ["rotate", "textLength", "lengthAdjust"];

/** Words that stand in one style from one place on. */
interface Run {
  readonly words: SetWords;
  readonly style: Style;
}

/** Runs that follow each other from one stated place. */
interface Chunk {
  readonly x: number;
  readonly y: number;
  readonly runs: Run[];
}

/** Turns text into areas, where its font is at hand. */
export class TextPainter {
  readonly #setting: Setting;

  constructor(setting: Setting) {
    this.#setting = setting;
  }

  /** Gathers the letters of a `text` element. @throws PictureError where they cannot be set */
  paint(text: Element, scope: Scope): void {
    if ((text.textContent ?? "").trim() === "" || scope.style.visibility !== "visible") return;
    const chunks: Chunk[] = [];
    this.#gather(text, scope, scope.style, chunks);
    for (const { x, y, runs } of chunks) {
      const width = runs.reduce((sum, { words }) => sum + words.advance, 0);
      const anchor = runs[0]?.style["text-anchor"];
      let at = x - (anchor === "middle" ? width / 2 : anchor === "end" ? width : 0);
      for (const run of runs) {
        this.#paintRun(text, scope, run, at, y);
        at += run.words.advance;
      }
    }
  }

  #gather(element: Element, scope: Scope, style: Style, chunks: Chunk[]): void {
    this.#place(element, scope, chunks);
    for (let node: Node | null = element.firstChild; node !== null; node = node.nextSibling) {
      if (node.nodeType === node.TEXT_NODE || node.nodeType === node.CDATA_SECTION_NODE) {
        this.#set(element, node.nodeValue ?? "", style, chunks);
      } else if (node.nodeType === node.ELEMENT_NODE) {
        const inner = node as Element;
        if (inner.localName === "title" || inner.localName === "desc") continue;
        if (inner.localName !== "tspan" && inner.localName !== "a") throw cannotSet(inner);
        const own = computedStyle(this.#setting.cascade.declaredBy(inner), style);
        if (own.display !== "none") this.#gather(inner, scope, own, chunks);
      }
    }
  }

  /** Begins a new chunk where an element states a place. */
  #place(element: Element, { viewport }: Scope, chunks: Chunk[]): void {
    if (LETTER_BY_LETTER.some((name) => element.hasAttribute(name))) throw cannotSet(element);
    const read = (name: string, of: number): number | undefined =>
      readAttribute(element, name, (value) => {
        if (/[\s,]/.test(value.trim())) throw cannotSet(element);
        return parseSvgLength(value, of);
      });
    const [x, y] = [read("x", viewport.width), read("y", viewport.height)];
    const [dx, dy] = [read("dx", viewport.width) ?? 0, read("dy", viewport.height) ?? 0];
    const last = chunks.at(-1);
    if (last !== undefined && x === undefined && y === undefined && dx === 0 && dy === 0) return;
    const penX = last ? last.x + last.runs.reduce((sum, { words }) => sum + words.advance, 0) : 0;
    chunks.push({ x: (x ?? penX) + dx, y: (y ?? last?.y ?? 0) + dy, runs: [] });
  }

  #set(element: Element, value: string, style: Style, chunks: Chunk[]): void {
    const { runs } = chunks.at(-1)!;
    const folded = value.replace(/\s+/g, " ");
    const text = runs.length === 0 ? folded.trimStart() : folded;
    if (text.trim() === "") return;
    const words = this.#setting.letters?.(text, letterStyle(element, style));
    if (words === undefined) throw cannotSet(element);
    runs.push({ words, style });
  }

  #paintRun(text: Element, scope: Scope, { words, style }: Run, x: number, y: number): void {
    const { gathered, canvas, report } = this.#setting;
    const line = lineOf(text);
    const paint = scope.clipping ? undefined : paintOf("fill", line, style, scope.context, canvas.byId);
    if (!paint && !scope.clipping) return;
    const rings = words.rings.map((ring) => ring.map(([a, b]) => mapPoint(scope.map, [a + x, b + y])));
    if (!hasArea(rings)) return;
    if (style.stroke !== "none") report.note(line, say.pictureTextStroke());
    const { colour, alpha } = paint ?? { colour: "#000000", alpha: 1 };
    gathered.add({ element: "text", line, called: scope.called, paint: "fill", colour, alpha, rule: "nonzero", rings });
  }
}

const WEIGHTS: ReadonlyMap<string, number> = new Map([
  ["normal", 400],
  ["bold", 700],
  ["lighter", 300],
  ["bolder", 700],
]);

function letterStyle(element: Element, style: Style): LetterStyle {
  const families = style["font-family"].split(",").map((family) => family.replace(/["']/g, "").trim());
  const size = atLine(lineOf(element), "font-size", () => parseSvgLength(style["font-size"], undefined));
  const weight = WEIGHTS.get(style["font-weight"]);
  const italic = /italic|oblique/.test(style["font-style"]);
  return { families: families.filter(Boolean), size, weight: weight ?? (Number(style["font-weight"]) || 400), italic };
}

function cannotSet(element: Element): PictureError {
  return new PictureError(lineOf(element), say.pictureUndrawn({ name: element.localName! }));
}

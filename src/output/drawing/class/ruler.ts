import { MM_PER_INCH } from "../../../core/units/length.ts";
import { levelPath, uprightPath } from "../path.ts";
import { tag, text } from "../svg-text.ts";

/** A printed ruler, mm: as long as the sheet is wide, millimetres above and sixteenths of an inch below. */
export function printedRuler(length: number): string {
  const whole = Math.floor(length / 10) * 10;
  const mm = Array.from({ length: whole + 1 }, (_, i) => ({ at: i, tall: i % 10 === 0 ? 5 : i % 5 === 0 ? 3.6 : 2.2 }));
  const sixteenths = Math.floor((length / MM_PER_INCH) * 16);
  const inch = Array.from({ length: sixteenths + 1 }, (_, i) => ({
    at: (i * MM_PER_INCH) / 16,
    tall: i % 16 === 0 ? 5 : i % 8 === 0 ? 4.2 : i % 4 === 0 ? 3.2 : 2,
  }));
  const upper = mm.map(({ at, tall }) => uprightPath([at, 0], tall, 3));
  const lower = inch.map(({ at, tall }) => uprightPath([at, 16], -tall, 3));
  return [
    tag("path", {
      class: "ruler-edge",
      d: levelPath([0, 0], whole),
      stroke: "#000",
      "stroke-width": 0.2,
      fill: "none",
    }),
    tag("path", {
      d: levelPath([0, 16], (sixteenths * MM_PER_INCH) / 16, 3),
      stroke: "#000",
      "stroke-width": 0.2,
      fill: "none",
    }),
    tag("path", { d: [...upper, ...lower].join(""), stroke: "#000", "stroke-width": 0.15, fill: "none" }),
    ...mm
      .filter(({ at }) => at % 10 === 0 && at > 0 && at < whole)
      .map(({ at }) => text(at, 8, String(at / 10), NUMBER)),
    ...inch
      .filter((_, i) => i % 16 === 0 && i > 0)
      .map(({ at }) => text(at, 10.6, String(Math.round(at / MM_PER_INCH)), NUMBER)),
    text(1, 8, "cm", { ...NUMBER, "text-anchor": "start" }),
    text(1, 10.6, "in", { ...NUMBER, "text-anchor": "start" }),
  ].join("");
}

const NUMBER = { "font-size": 2.5, "text-anchor": "middle", fill: "#000" };

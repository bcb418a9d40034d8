import { extentOf } from "../../core/packing/pack.ts";
import type { Part } from "../../core/window/part.ts";
import { partDrawing } from "./part-drawing.ts";
import { type Figure, figureSvg } from "./pocket-figure.ts";
import { tag, text } from "./svg-text.ts";

/** Tints by material; parts are told apart by their names. */
const FILL: Readonly<Record<Part["material"], string>> = { card: "#f1e8d5", acetate: "#e3eff0", paper: "#ffffff" };

/** One part in a small figure of its own. */
export function partFigure(part: Part): Figure {
  const box = extentOf(part);
  const pad = 3;
  const label = `${part.name}: ${part.use}`;
  const drawing = partDrawing(part, (point) => point, { thin: 1.6, labels: false, fill: FILL[part.material] });
  return {
    label,
    svg: figureSvg(
      box.left - pad,
      box.top - pad,
      box.right - box.left + 2 * pad,
      box.bottom - box.top + 2 * pad,
      label,
      drawing,
    ),
  };
}

/** How the window goes together, from the book to the viewer: layers drawn apart along a slanted line, each named. */
export function windowLayers(parts: readonly Part[]): Figure {
  const order = ["base frame", "glazing", "door"].map((name) => parts.find((part) => part.name === name)!);
  const boxes = order.map(extentOf);
  const width = Math.max(...boxes.map((box) => box.right - box.left));
  const height = Math.max(...boxes.map((box) => box.bottom - box.top));
  const stride = width * 0.62;
  const label = `The window from the book outward: ${order.map((part) => part.name).join(", then ")}.`;
  const drawn = order.map((part, i) => {
    const box = boxes[i]!;
    const middle = (box.top + box.bottom) / 2;
    const x = (px: number): number => i * stride + (px - (box.left + box.right) / 2) * 0.5;
    const place = ([px, py]: readonly [number, number]): [number, number] => [
      x(px),
      py - middle + (px - (box.left + box.right) / 2) * 0.16,
    ];
    return (
      partDrawing(part, place, { thin: 1.8, labels: false, fill: FILL[part.material] }) +
      text(i * stride, height / 2 + 16, `${i + 1} ${part.name}`, {
        "font-size": 8,
        "text-anchor": "middle",
        fill: "#000",
      })
    );
  });
  const base = tag("path", {
    d: `M${-width * 0.3} ${height / 2 + 24}H${2 * stride + width * 0.3}`,
    fill: "none",
    stroke: "#000",
    "stroke-width": 0.4,
  });
  const words =
    text(-width * 0.3, height / 2 + 32, "book", { "font-size": 7, fill: "#000" }) +
    text(2 * stride + width * 0.3, height / 2 + 32, "you", { "font-size": 7, "text-anchor": "end", fill: "#000" });
  return {
    label,
    svg: figureSvg(
      -width * 0.36,
      -height / 2 - 14,
      2 * stride + width * 0.72,
      height + 52,
      label,
      drawn.join("") + base + words,
    ),
  };
}

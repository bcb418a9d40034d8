import { type Calibration, calibrate, MeasureError } from "../../core/bench/calibration.ts";
import type { Desk } from "../../core/bench/desk.ts";
import { type Measured, measureBatch } from "../../core/bench/progress.ts";
import { toDegrees } from "../../core/units/angle.ts";
import { LengthError, parseLength } from "../../core/units/length.ts";
import { formatSize } from "../../words/lengths.ts";
import { openDialog, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** The dialog that takes the first batch's thickness and tells how far the book will close. */
export function bindMeasure(root: HTMLElement, host: BenchHost): () => void {
  const dialog = part<HTMLDialogElement>(root, "measure");
  const form = part<HTMLFormElement>(dialog, "measure-form");
  const fields = {
    leaves: part<HTMLInputElement>(form, "measure-leaves"),
    thickness: part<HTMLInputElement>(form, "measure-thickness"),
  };
  const show = (read: Reading | Mistake): void => {
    const result = part(dialog, "measure-result");
    for (const field of Object.values(fields)) field.removeAttribute("aria-invalid");
    if ("field" in read) fields[read.field].setAttribute("aria-invalid", "true");
    result.classList.toggle("wrong", "field" in read);
    result.textContent = "field" in read ? `Allowed: ${read.allowed}.` : verdict(read.result, host.desk);
  };
  const follow = (): void => {
    if (fields.thickness.value.trim() !== "") show(readForm(fields, host.desk));
    else part(dialog, "measure-result").textContent = "";
  };
  form.addEventListener("input", follow);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const read = readForm(fields, host.desk);
    if ("field" in read) {
      show(read);
      fields[read.field].focus();
      return;
    }
    dialog.close();
    host.move((progress) => measureBatch(progress, read.measured));
    host.tell(verdict(read.result, host.desk));
  });
  return () => {
    const { plan, progress, units } = host.desk;
    const leaves = progress.measured?.leaves ?? plan.batches[0]?.count ?? plan.stops.length;
    fields.leaves.value = String(leaves);
    const thickness = progress.measured?.thickness;
    fields.thickness.value = thickness === undefined ? "" : formatSize(thickness, units).replace("\u00a0", " ");
    follow();
    openDialog(dialog);
    fields.thickness.focus();
  };
}

interface Reading {
  readonly measured: Measured;
  readonly result: Calibration;
}

interface Mistake {
  readonly field: "leaves" | "thickness";
  readonly allowed: string;
}

/** What the form says, or which field is wrong and what it may say. */
function readForm(fields: Readonly<Record<Mistake["field"], HTMLInputElement>>, desk: Desk): Reading | Mistake {
  const { kit, stops } = desk.plan;
  const leaves = Number(fields.leaves.value);
  if (!Number.isInteger(leaves) || leaves < 2 || leaves > stops.length)
    return { field: "leaves", allowed: `2 to ${stops.length} leaves` };
  const text = fields.thickness.value.trim();
  try {
    const thickness = parseLength(/[\d½¼¾⅛⅜⅝⅞]$/.test(text) ? `${text} ${desk.units}` : text);
    const measured = { leaves, thickness };
    return { measured, result: calibrate(kit, measured) };
  } catch (error) {
    if (error instanceof MeasureError) return { field: "thickness", allowed: error.message };
    if (!(error instanceof LengthError)) throw error;
    const allowed = desk.units === "mm" ? "a length like 9.5 or 3/8 in" : "a length like 3/8 or 9.5 mm";
    return { field: "thickness", allowed };
  }
}

/** Resting opening, hold width, and whether the wanted opening can be held. */
export function verdict(result: Calibration, { units }: Desk): string {
  const degrees = (angle: number): string => `${Math.round(toDegrees(angle))}°`;
  const bulk = `A flap of yours counts ${result.flapBulk.toFixed(1)} leaf thicknesses.`;
  const rests = `Folded, the book rests at about ${degrees(result.restingOpening)}; the picture wants ${degrees(result.opening)}, a hold width of ${formatSize(result.holdWidth, units)} from the folded edge of the first picture leaf to that of the last, at the head.`;
  return result.holds
    ? `${bulk} ${rests} The wanted opening can be held.`
    : `${bulk} ${rests} The flaps push it wider, to about ${formatSize(result.restingWidth, units)}: the wanted opening cannot be held unless the folds are pressed harder and the book is tied while it settles.`;
}

import { type Calibration, calibrate, MeasureError } from "../bench/calibration.ts";
import type { Desk } from "../bench/desk.ts";
import { type Measured, measureBatch } from "../bench/progress.ts";
import { toDegrees } from "../units/angle.ts";
import { formatSize, LengthError, parseLength } from "../units/length.ts";
import { openDialog, part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";

/** The dialog that takes the first batch's thickness and tells how far the book will close. */
export function bindMeasure(root: HTMLElement, host: BenchHost): () => void {
  const dialog = part<HTMLDialogElement>(root, "measure");
  const form = part<HTMLFormElement>(dialog, "measure-form");
  const follow = (): Measured | undefined => {
    const read = readForm(form, host.desk);
    const result = part(dialog, "measure-result");
    const thickness = part<HTMLInputElement>(form, "measure-thickness");
    const wrong = typeof read === "string" && thickness.value.trim() !== "";
    thickness.toggleAttribute("aria-invalid", false);
    if (wrong) thickness.setAttribute("aria-invalid", "true");
    result.classList.toggle("wrong", wrong);
    result.textContent = typeof read !== "string" ? verdict(read.result, host.desk) : wrong ? `Allowed: ${read}.` : "";
    return typeof read === "string" ? undefined : read.measured;
  };
  form.addEventListener("input", follow);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const measured = follow();
    if (!measured) {
      part<HTMLInputElement>(form, "measure-thickness").focus();
      return;
    }
    dialog.close();
    host.move(
      (progress) => measureBatch(progress, measured),
      verdict(calibrate(host.desk.plan.kit, measured), host.desk),
    );
  });
  return () => {
    const { plan, progress, units } = host.desk;
    const leaves = progress.measured?.leaves ?? plan.batches[0]?.count ?? plan.stops.length;
    part<HTMLInputElement>(form, "measure-leaves").value = String(leaves);
    const thickness = progress.measured?.thickness;
    part<HTMLInputElement>(form, "measure-thickness").value =
      thickness === undefined ? "" : formatSize(thickness, units).replace("\u00a0", " ");
    follow();
    openDialog(dialog);
    part<HTMLInputElement>(form, "measure-thickness").focus();
  };
}

/** What the form says, or what it may say. */
function readForm(form: HTMLFormElement, desk: Desk): { measured: Measured; result: Calibration } | string {
  const { kit, stops } = desk.plan;
  const leaves = Number(part<HTMLInputElement>(form, "measure-leaves").value);
  if (!Number.isInteger(leaves) || leaves < 2 || leaves > stops.length) return `2 to ${stops.length} leaves`;
  const text = part<HTMLInputElement>(form, "measure-thickness").value.trim();
  try {
    const thickness = parseLength(/[\d½¼¾⅛⅜⅝⅞]$/.test(text) ? `${text} ${desk.units}` : text);
    const measured = { leaves, thickness };
    return { measured, result: calibrate(kit, measured) };
  } catch (error) {
    if (error instanceof MeasureError) return error.message;
    if (error instanceof LengthError)
      return desk.units === "mm" ? "a length like 9.5 or 3/8 in" : "a length like 3/8 or 9.5 mm";
    throw error;
  }
}

/** Resting opening, hold width, and whether the wanted opening can be held. */
export function verdict(result: Calibration, { units }: Desk): string {
  const degrees = (angle: number): string => `${Math.round(toDegrees(angle))}°`;
  const bulk = `A flap of yours counts ${result.flapBulk.toFixed(1)} leaf thicknesses.`;
  const rests = `Folded, the book rests at about ${degrees(result.restingOpening)}; the picture wants ${degrees(result.opening)}, a hold width of ${formatSize(result.holdWidth, units)}.`;
  return result.holds
    ? `${bulk} ${rests} The wanted opening can be held.`
    : `${bulk} ${rests} The flaps push it wider, to a hold width of about ${formatSize(result.restingWidth, units)}: the wanted opening cannot be held unless the folds are pressed harder and the book is tied while it settles.`;
}

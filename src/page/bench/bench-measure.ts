import { type Calibration, calibrate } from "../../core/bench/calibration.ts";
import { type Desk, deskStyle } from "../../core/bench/desk.ts";
import { type Measured, measureBatch } from "../../core/bench/progress.ts";
import { readLength } from "../../core/units/written-length.ts";
import { calibrationWords, thicknessAllowed } from "../../words/bench.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { openDialog, part } from "./bench-dom.ts";
import type { Pressed } from "./bench-face.ts";
import type { BenchHost } from "./bench-host.ts";
import { faceOf } from "./face-of.ts";

/** The dialog that takes the first batch's thickness and tells how far the book will close. */
export function bindMeasure(root: HTMLElement, host: BenchHost): () => void {
  const dialog = part<HTMLDialogElement>(root, "measure");
  const form = part<HTMLFormElement>(dialog, "measure-form");
  const fields = {
    leaves: part<HTMLInputElement>(form, "measure-leaves"),
    thickness: part<HTMLInputElement>(form, "measure-thickness"),
  };
  const lead = part(dialog, "measure-lead");
  const press = (): void => {
    lead.textContent = pressedAt(host.desk, Number(fields.leaves.value)).words;
  };
  const show = (read: Reading | Mistake): void => {
    const result = part(dialog, "measure-result");
    for (const field of Object.values(fields)) field.removeAttribute("aria-invalid");
    if ("field" in read) fields[read.field].setAttribute("aria-invalid", "true");
    result.classList.toggle("wrong", "field" in read);
    result.textContent = "field" in read ? read.allowed : calibrationWords(read.result, host.desk.units);
  };
  const follow = (): void => {
    if (fields.thickness.value.trim() !== "") show(readForm(fields, host.desk));
    else part(dialog, "measure-result").textContent = "";
  };
  fields.leaves.addEventListener("input", press);
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
    host.tell(calibrationWords(read.result, host.desk.units));
  });
  return () => {
    const { plan, progress, units } = host.desk;
    const leaves = progress.measured?.leaves ?? plan.batches[0]?.count ?? plan.stops.length;
    fields.leaves.value = String(leaves);
    const thickness = progress.measured?.thickness;
    fields.thickness.value = thickness === undefined ? "" : formatSize(thickness, units).replace("\u00a0", " ");
    press();
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
  /** What it may say, in a sentence. */
  readonly allowed: string;
}

/** What the form says, or which field is wrong and what it may say. */
function readForm(fields: Readonly<Record<Mistake["field"], HTMLInputElement>>, desk: Desk): Reading | Mistake {
  const { stops } = desk.plan;
  const leaves = Number(fields.leaves.value);
  if (!Number.isInteger(leaves) || leaves < 2 || leaves > stops.length)
    return { field: "leaves", allowed: say.benchMeasureCountAllowed({ most: stops.length }) };
  const thickness = readLength(fields.thickness.value, desk.units);
  if (thickness === undefined)
    return { field: "thickness", allowed: say.benchMeasureLengthAllowed({ units: desk.units }) };
  const { flaps } = pressedAt(desk, leaves);
  const measured = { leaves, thickness, ...(flaps === undefined ? {} : { flaps }) };
  const result = calibrate(desk.plan, measured);
  return "bounds" in result
    ? { field: "thickness", allowed: thicknessAllowed(result.bounds, desk.units) }
    : { measured, result: result.calibration };
}

/** Where so many leaves are pressed, or a first batch where the field says no number. */
function pressedAt(desk: Desk, leaves: number): Pressed {
  const { plan } = desk;
  const count = Number.isInteger(leaves) && leaves >= 2 ? leaves : (plan.batches[0]?.count ?? plan.stops.length);
  return faceOf(plan).pressed(plan.pattern, Math.min(count, plan.stops.length), deskStyle(desk));
}

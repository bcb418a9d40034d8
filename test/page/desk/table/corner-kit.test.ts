import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { computeCorner } from "../../../../src/core/pattern/compute-corner.ts";
import { editText } from "../../../../src/input/desk/edit.ts";
import { readKit } from "../../../../src/input/kit/read-kit.ts";
import { kitText } from "../../../../src/input/kit/state-kit.ts";
import { bookFields } from "../../../../src/page/desk/table/book-fields.ts";
import type { FigureField } from "../../../../src/page/desk/table/figure-field.ts";
import { judgedCorner } from "../../../../src/page/desk/table/judged.ts";
import { openingFields } from "../../../../src/page/desk/table/opening-fields.ts";
import type { CornerShown } from "../../../../src/page/desk/table/shown.ts";

const BASE = join(import.meta.dirname, "../../../..");
const FOLDER = join(BASE, "content/kits/quayside-herring");
const text = readFileSync(join(FOLDER, "index.md"), "utf8");
const { kit } = readKit(FOLDER, BASE, []);

function shown(): CornerShown {
  const result = computeCorner(kit);
  if (!result.fits) throw new Error(`does not fit: ${result.finding.kind}`);
  return { kit, stated: stated(text), pattern: result.pattern, findings: result.findings };
}

function stated(of: string): CornerShown["stated"] {
  return kitText("quayside-herring", "index.md", of).data;
}

/** What the text states after a field of a name was given a value. */
function edited(fields: readonly FigureField[], name: string, value: number | string) {
  const field = fields.find((one) => one.name === name)!;
  return stated(editText(text, field.edits(value as never))!);
}

describe("a kit folded by corners on the table", () => {
  it("is changed in its height, place, borders, folds and book", () => {
    const fields = openingFields(shown());
    expect(edited(fields, "height", 91).fit.height).toBe(91);
    expect(edited(fields, "head", 31).fit.head).toBe(31);
    expect(edited(fields, "borderBefore", 7).fit.borderLeaves[0]).toBe(7);
    expect(edited(fields, "foldStyle", "single").fit.foldStyle).toBe("single");
    expect(edited(fields, "empty", "middle").fit.corner.empty).toBe("middle");
    expect(edited(bookFields(shown()), "leafHeight", 211).book.leafHeight).toBe(211);
  });

  it("is judged by its fit, with what is found", () => {
    const { verdict, findings, ways } = judgedCorner(shown());
    expect([verdict, findings.length, ways]).toEqual(["fits", 3, []]);
  });
});

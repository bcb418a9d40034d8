import { describe, expect, it } from "vitest";
import { leaveOutSpecks } from "../../../src/input/raster/specks.ts";

/** A field from rows of # for inside and . for outside. */
function fieldOf(rows: readonly string[]) {
  const values = Float32Array.from(rows.join(""), (sign) => (sign === "#" ? 1 : -1));
  return { width: rows[0]!.length, height: rows.length, values };
}

function rowsOf({ width, height, values }: ReturnType<typeof fieldOf>): string[] {
  return Array.from({ length: height }, (_, y) =>
    Array.from(values.subarray(y * width, (y + 1) * width), (value) => (value >= 0 ? "#" : ".")).join(""),
  );
}

describe("leaveOutSpecks(field, least)", () => {
  it("takes out small parts and closes small holes", () => {
    const field = fieldOf(["#......", "..####.", "..#.##.", "..####.", "......#"]);
    expect(leaveOutSpecks(field, 3)).toEqual({ parts: 1, holes: 1, specks: 3, inside: 12 });
    expect(rowsOf(field)).toEqual([".......", "..####.", "..####.", "..####.", "......."]);
  });

  it("joins parts by their sides and holes by their corners", () => {
    const field = fieldOf(["##..", "##..", "..##", "..##"]);
    expect(leaveOutSpecks(field, 1)).toEqual({ parts: 2, holes: 1, specks: 0, inside: 8 });
  });

  it("keeps what is just large enough", () => {
    const field = fieldOf(["....", ".##.", "...."]);
    expect(leaveOutSpecks(field, 2)).toEqual({ parts: 1, holes: 1, specks: 0, inside: 2 });
    expect(leaveOutSpecks(field, 2.1)).toEqual({ parts: 0, holes: 1, specks: 1, inside: 0 });
  });

  it("takes out what lies on the outline itself", () => {
    const field = { width: 3, height: 1, values: Float32Array.of(-1, 0, -1) };
    expect(leaveOutSpecks(field, 2).inside).toBe(0);
  });
});

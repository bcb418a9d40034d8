import { describe, expect, it } from "vitest";
import { leaveOutSpecks } from "../../../src/input/raster/specks.ts";
import { fc } from "../../seed.ts";

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

describe("leaveOutSpecks(field, least) of any field", () => {
  /** Flips small parts one after the other, found by walking from pixel to pixel. */
  function walked(field: ReturnType<typeof fieldOf>, least: number): string[] {
    const signs = rowsOf(field).map((row) => [...row]);
    for (const side of ["#", "."]) {
      const seen = new Set<string>();
      for (let y = 0; y < field.height; y += 1) {
        for (let x = 0; x < field.width; x += 1) {
          if (signs[y]![x] !== side || seen.has(`${x},${y}`)) continue;
          const part: [number, number][] = [[x, y]];
          seen.add(`${x},${y}`);
          for (const [u, v] of part) {
            for (const [i, j] of [-1, 0, 1].flatMap((i) => [-1, 0, 1].map((j) => [i, j] as const))) {
              if ((side === "#" && i !== 0 && j !== 0) || signs[v + j]?.[u + i] !== side) continue;
              if (seen.has(`${u + i},${v + j}`)) continue;
              seen.add(`${u + i},${v + j}`);
              part.push([u + i, v + j]);
            }
          }
          if (part.length >= least) continue;
          for (const [u, v] of part) signs[v]![u] = side === "#" ? "." : "#";
        }
      }
    }
    return signs.map((row) => row.join(""));
  }

  it("leaves what walking from pixel to pixel leaves", () => {
    const sides = fc.integer({ min: 1, max: 9 });
    const fields = fc.tuple(sides, sides).chain(([width, height]) => {
      const row = fc
        .array(fc.constantFrom("#", "."), { minLength: width, maxLength: width })
        .map((signs) => signs.join(""));
      return fc.array(row, { minLength: height, maxLength: height });
    });
    fc.assert(
      fc.property(fields, fc.integer({ min: 0, max: 9 }), (rows, least) => {
        const field = fieldOf(rows);
        const { inside } = leaveOutSpecks(field, least);
        expect(rowsOf(field)).toEqual(walked(fieldOf(rows), least));
        expect(inside).toBe(field.values.filter((value) => value >= 0).length);
      }),
    );
  });
});

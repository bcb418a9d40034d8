import { describe, expect, it } from "vitest";
import { classLayouts, seatParts } from "../../../src/core/class/class-sheets.ts";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { poolSupplies, unusedStock } from "../../../src/core/class/pool.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { patternJson } from "../../../src/output/data/pattern-json.ts";
import { lengthOf, rimAndHoles } from "../geometry/plane.ts";
import { readDemoClass } from "./made-class.ts";

const plan = readDemoClass();
const { fitting } = fitSeats(plan.seats, plan.kits);
const parts = seatParts(fitting);
const layouts = classLayouts(parts, plan.sheets);

const poolOf = (changes: Partial<KitClass>) => poolSupplies({ ...plan, ...changes }, fitting, parts, layouts);
const line = (list: ReturnType<typeof poolOf>, item: string) => {
  const found = list.filter((one) => one.item === item);
  if (found.length !== 1) throw new Error(`${found.length} lines ${item}`);
  return found[0]!;
};

/** What each seat's published pattern says, read as anyone reads it. */
const published = fitting.map(({ seat, kit, pattern, counts, effort }) => ({
  seat: seat.number,
  pattern: JSON.parse(patternJson(kit, pattern, suppliesOf(kit, pattern, counts), effort)),
}));

describe("poolSupplies(plan, seats, parts, layouts)", () => {
  // Source: arithmetic on the published patterns. A fresh blade every 250 cuts (common practice, no source), one more for a window.
  it("adds up what each seat needs of blades and glue dots", () => {
    const blades = published.map(({ pattern }) => {
      const cuts = pattern.leaves.flatMap((leaf: { cuts: unknown[] }) => leaf.cuts).length;
      return Math.ceil((cuts + (pattern.light?.notches.length ?? 0)) / 250) + (pattern.insert ? 1 : 0);
    });
    const dots = published.map(({ pattern }) => {
      const tacks = pattern.leaves.flatMap((leaf: { tacks: { from: number; to: number }[] }) =>
        leaf.tacks.filter((tack) => tack.to - tack.from >= pattern.fit.leastTab),
      );
      return tacks.length + (pattern.insert ? 8 : 0);
    });
    const list = poolOf({ stock: [] });
    expect(line(list, "craft-knife blades").need).toBe(blades.reduce((a, b) => a + b, 0));
    expect(line(list, "glue dots").need).toBe(dots.reduce((a, b) => a + b, 0));
  });

  // Source: arithmetic. Lengths are added over the seats with their waste, and rounded up to 0.1 m once.
  it.each([0, 0.1, 0.25])("adds tape and string before it rounds them up, with waste %d", (waste) => {
    const list = poolOf({ waste, stock: [] });
    const windows = published.filter(({ pattern }) => pattern.insert).map(({ pattern }) => pattern.insert);
    const round = windows.map((insert) => {
      const frame = insert.parts.find((part: { name: string }) => part.name === "base frame");
      return lengthOf(rimAndHoles(frame.outlines).rim);
    });
    const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
    const bought = (mm: number) => Math.ceil((mm * (1 + waste)) / 100) / 10;
    expect(line(list, "double-sided tape").need).toBe(bought(2 * sum(round)));
    expect(line(list, "string").need).toBe(bought(sum(windows.map((insert) => insert.stringLength))));
    const apart = sum(round.map((length) => bought(2 * length)));
    expect(line(list, "double-sided tape").need).toBeLessThanOrEqual(apart);
  });

  it("counts sheets as they are packed over the class, and one book, one set of tools a seat", () => {
    const list = poolOf({ stock: [] });
    const sheets = (material: string) =>
      layouts.flatMap((layout) => layout.sheets).filter((sheet) => sheet.material === material).length;
    for (const material of ["card", "acetate", "paper"]) expect(line(list, material).need).toBe(sheets(material));
    expect(line(list, "second-hand book").need).toBe(fitting.length);
    expect(line(list, "craft knife").need).toBe(fitting.length);
    expect(line(list, "battery LED light").need).toBe(published.filter(({ pattern }) => pattern.light).length);
  });

  it("takes what is at hand off, and never below nothing", () => {
    const none = poolOf({ stock: [] });
    const list = poolOf({
      stock: [
        { item: "card", quantity: 1 },
        { item: "Glue dots", quantity: 10_000 },
        { item: "double-sided tape", quantity: 0.55 },
        { item: "craft knife", quantity: 3 },
      ],
    });
    expect(line(list, "card").buy).toBe(line(none, "card").need - 1);
    expect(line(list, "glue dots")).toMatchObject({ buy: 0, toPay: 0, stock: line(none, "glue dots").need });
    expect(line(list, "craft knife").buy).toBe(fitting.length - 3);
    const tape = line(list, "double-sided tape");
    expect(tape.buy).toBeCloseTo(Math.ceil((tape.need - 0.55) * 10 - 1e-9) / 10, 9);
  });

  it("prices what is used and what is to buy by the teacher's own prices", () => {
    const list = poolOf({ prices: { button: 0.25, blades: 0.3 }, stock: [{ item: "button", quantity: 1 }] });
    const button = line(list, "button");
    expect(button).toMatchObject({ worth: 0.25 * button.need, toPay: 0.25 * (button.need - 1) });
    expect(line(list, "card").worth).toBeUndefined();
  });

  it("keeps lights of different sizes apart", () => {
    const wide = plan.seats.map((seat) =>
      seat.number === 8 ? { ...seat, refit: { ...seat.refit, lightDiameter: 34 } } : seat,
    );
    const fits = fitSeats(wide, plan.kits).fitting;
    const lights = poolSupplies(plan, fits, seatParts(fits), layouts).filter((one) => one.id === "light");
    expect(lights.map((light) => light.need)).toEqual([1, 1]);
    expect(lights.map((light) => light.note).join()).toMatch(/38.*34/);
  });

  it("tells of stock that is nothing on the list", () => {
    const more = { ...plan, stock: [...plan.stock, { item: "gold leaf", quantity: 2 }] };
    expect(unusedStock(more, poolSupplies(more, fitting, parts, layouts))).toEqual(["gold leaf"]);
  });
});

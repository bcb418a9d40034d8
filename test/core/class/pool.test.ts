import { describe, expect, it } from "vitest";
import { classLayouts, seatParts } from "../../../src/core/class/class-sheets.ts";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import type { KitClass, Stock } from "../../../src/core/class/kit-class.ts";
import { poolSupplies } from "../../../src/core/class/pool.ts";
import { unusedStock } from "../../../src/core/class/stock.ts";
import type { OwnSupply } from "../../../src/core/kit/kit.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { patternJson } from "../../../src/output/data/pattern-json.ts";
import { lengthOf, rimAndHoles } from "../geometry/plane.ts";
import { readFixtureClass } from "./made-class.ts";

const plan = readFixtureClass();
const { fitting } = fitSeats(plan.seats, plan.kits);
const layouts = classLayouts(seatParts(fitting), plan.sheets);

const poolOf = (changes: Partial<KitClass>) => poolSupplies({ ...plan, ...changes }, fitting, layouts);
type Pool = ReturnType<typeof poolOf>;
const lines = (list: Pool, id: Pool[number]["id"]) => list.filter((one) => one.id === id);
const line = (list: Pool, id: Pool[number]["id"]) => {
  const found = lines(list, id);
  if (found.length !== 1) throw new Error(`${found.length} lines ${id}`);
  return found[0]!;
};
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** Stock of a supply that the program counts. */
const counted = (id: NonNullable<Stock["id"]>, quantity: number): Stock => ({ id, item: id, quantity });
/** Stock that only a kit's author or the teacher has a name for. */
const named = (item: string, quantity: number): Stock => ({ id: undefined, item, quantity });

/** The seats with supplies that their kits' authors state, by kit. */
function withOwn(own: (slug: string) => readonly OwnSupply[]) {
  return fitting.map((fit) => ({ ...fit, kit: { ...fit.kit, supplies: own(fit.kit.slug) } }));
}

const ownSupply = (item: string, changes: Partial<OwnSupply> = {}): OwnSupply => ({
  id: undefined,
  item,
  quantity: 1,
  unit: "handfuls",
  unitId: undefined,
  price: undefined,
  ...changes,
});

/** What each seat's published pattern says, read as anyone reads it. */
const published = fitting.map(({ seat, kit, pattern, findings, counts, effort }) => ({
  seat: seat.number,
  pattern: JSON.parse(patternJson(kit, pattern, findings, suppliesOf(kit, pattern, counts), effort)),
}));

describe("poolSupplies(plan, seats, layouts)", () => {
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
    expect(line(list, "blades").need).toBe(sum(blades));
    expect(line(list, "glueDots").need).toBe(sum(dots));
  });

  // Source: arithmetic. Lengths are added over the seats with their waste, and rounded up to 0.1 m once.
  it.each([0, 0.1, 0.25])("adds tape and string before it rounds them up, with waste %d", (waste) => {
    const list = poolOf({ waste, stock: [] });
    const windows = published.filter(({ pattern }) => pattern.insert).map(({ pattern }) => pattern.insert);
    const round = windows.map((insert) => {
      const frame = insert.parts.find((part: { name: string }) => part.name === "base frame");
      return lengthOf(rimAndHoles(frame.outlines).rim);
    });
    const bought = (mm: number) => Math.ceil((mm * (1 + waste)) / 100) / 10;
    expect(line(list, "tape")).toMatchObject({ need: bought(2 * sum(round)), unit: "m" });
    expect(line(list, "string").need).toBe(bought(sum(windows.map((insert) => insert.stringLength))));
    const apart = sum(round.map((length) => bought(2 * length)));
    expect(line(list, "tape").need).toBeLessThanOrEqual(apart);
  });

  it("counts sheets as they are packed over the class, and one book, one set of tools a seat", () => {
    const list = poolOf({ stock: [] });
    const sheets = (material: string) =>
      layouts.flatMap((layout) => layout.sheets).filter((sheet) => sheet.material === material).length;
    for (const material of ["card", "acetate", "paper"] as const) {
      expect(line(list, material)).toMatchObject({ need: sheets(material), unit: "sheet", sheet: "A4" });
      expect(line(list, material).reason).toEqual({ kind: "packed", tooLarge: [] });
    }
    expect(line(list, "book").need).toBe(fitting.length);
    expect(line(list, "knife").need).toBe(fitting.length);
    expect(line(list, "light").need).toBe(published.filter(({ pattern }) => pattern.light).length);
  });

  it("prices what is used and what is to buy by the teacher's own prices", () => {
    const list = poolOf({ prices: { button: 0.25, blades: 0.3 }, stock: [counted("button", 1)] });
    const button = line(list, "button");
    expect(button).toMatchObject({ worth: 0.25 * button.need, toPay: 0.25 * (button.need - 1) });
    expect(line(list, "card").worth).toBeUndefined();
  });

  it("keeps lights of different sizes apart", () => {
    const wide = plan.seats.map((seat) =>
      seat.number === 8 ? { ...seat, refit: { ...seat.refit, lightDiameter: 34 } } : seat,
    );
    const lights = lines(poolSupplies(plan, fitSeats(wide, plan.kits).fitting, layouts), "light");
    expect(lights.map((light) => light.need)).toEqual([1, 1]);
    expect(lights.map(({ reason }) => reason)).toEqual(
      [38, 34].map((diameter) => ({ kind: "seats", seats: 1, of: { kind: "light", diameter, height: 45 } })),
    );
  });

  it("keeps cells of different names apart", () => {
    const [first, ...rest] = fitting.filter(({ pattern }) => pattern.pocket);
    const others = [{ ...first!, kit: { ...first!.kit, cells: "AAA" } }, ...rest];
    const cells = lines(poolSupplies(plan, others, layouts), "cells");
    expect(cells.map(({ own, need }) => [own!.item, need])).toEqual([
      ["AAA", 1],
      ["CR2032", rest.length],
    ]);
  });

  it("does not add what is counted in different units", () => {
    const tape = ownSupply("double-sided tape", { id: "tape", quantity: 2, unit: "rolls" });
    const first = fitting.find(({ pattern }) => pattern.window)!;
    const seats = fitting.map((fit) => (fit === first ? { ...fit, kit: { ...fit.kit, supplies: [tape] } } : fit));
    const found = lines(poolSupplies({ ...plan, stock: [] }, seats, layouts), "tape");
    expect(found.map(({ unit, own }) => unit ?? own!.unit).toSorted()).toEqual(["m", "rolls"]);
    expect(found.find(({ unit }) => unit === undefined)!.need).toBe(2);
  });

  it("adds a kit's own supplies by their name, whatever its capitals", () => {
    const seats = withOwn((slug) => [ownSupply(slug === "little-gull" ? "Moss" : "moss", { quantity: 3 })]);
    const moss = poolSupplies(plan, seats, layouts).filter(({ own }) => own?.item.toLowerCase() === "moss");
    expect(moss.map(({ id, need }) => [id, need])).toEqual([[undefined, 3 * fitting.length]]);
  });
});

describe("stock", () => {
  it("is taken off, and never below nothing", () => {
    const none = poolOf({ stock: [] });
    const list = poolOf({
      stock: [counted("card", 1), counted("glueDots", 10_000), counted("tape", 0.55), counted("knife", 3)],
    });
    expect(line(list, "card").buy).toBe(line(none, "card").need - 1);
    expect(line(list, "glueDots")).toMatchObject({ buy: 0, toPay: 0, stock: line(none, "glueDots").need });
    expect(line(list, "knife").buy).toBe(fitting.length - 3);
    const tape = line(list, "tape");
    expect(tape.buy).toBeCloseTo(Math.ceil((tape.need - 0.55) * 10 - 1e-9) / 10, 9);
  });

  it("is told by its id, not by what the teacher calls it", () => {
    const list = poolOf({ stock: [{ id: "card", item: "acetate", quantity: 1 }] });
    expect(line(list, "card").stock).toBe(1);
    expect(line(list, "acetate").stock).toBe(0);
  });

  it("of paper is taken off what guides are drawn on", () => {
    expect(line(poolOf({ stock: [counted("paper", 50)] }), "paper")).toMatchObject({ buy: 0, stock: 1 });
  });

  it("of a kit's own supply is told by its name, in any case", () => {
    const seats = withOwn(() => [ownSupply("Sea moss", { quantity: 2 })]);
    const stock = [named(" sea MOSS ", 5)];
    const list = poolSupplies({ ...plan, stock }, seats, layouts);
    expect(list.find(({ own }) => own?.item === "Sea moss")).toMatchObject({
      need: 2 * fitting.length,
      stock: 5,
      buy: 2 * fitting.length - 5,
    });
    expect(unusedStock({ ...plan, stock }, list)).toEqual([]);
  });

  it("of the cells that a kit's author names is told by that name and by what they are", () => {
    for (const stock of [[named("cr2032", 1)], [counted("cells", 1)]])
      expect(line(poolOf({ stock }), "cells").stock).toBe(1);
  });

  it("that is nothing on the list is told of", () => {
    const gold = named("gold leaf", 2);
    const more = { ...plan, stock: [...plan.stock, gold, counted("packing", 1)] };
    expect(unusedStock(more, poolSupplies(more, fitting, layouts))).toEqual([gold]);
  });
});

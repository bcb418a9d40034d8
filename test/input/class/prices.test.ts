import { describe, expect, it } from "vitest";
import { messagesOfClass, readMadeClass, smallClass } from "../../core/class/made-class.ts";

describe("what a class states of prices", () => {
  it("is prices for one, one for a printed side, those of a size of sheets, and packs", () => {
    const plan = readMadeClass({
      ...smallClass(),
      sheets: ["a4", "12x12"],
      prices: { card: 0.35, page: 0.05 },
      sheetPrices: [
        { sheet: "12x12", card: 0.9 },
        { sheet: "A4", acetate: 2 },
      ],
      packs: { blades: 10 },
      tools: { mat: 4, glueGun: 2 },
    });
    expect(plan.prices).toEqual({ card: 0.35 });
    expect(plan.pagePrice).toBe(0.05);
    expect(plan.sheetPrices).toEqual([
      { sheet: "12 × 12 in", card: 0.9, acetate: undefined },
      { sheet: "A4", card: undefined, acetate: 2 },
    ]);
    expect(plan.packs).toEqual({ blades: 10 });
    expect(plan.tools).toEqual({ mat: 4, glueGun: 2 });
  });

  it("is nothing where nothing is stated", () => {
    const { pagePrice, sheetPrices, packs, tools, sessions } = readMadeClass(smallClass());
    expect([pagePrice, sheetPrices, packs, tools, sessions[0]!.buffer]).toEqual([undefined, [], {}, {}, 0]);
  });

  it.each([
    [{ sheets: ["a4"], sheetPrices: [{ sheet: "letter", card: 1 }] }, "letter"],
    [{ prices: { pages: 1 } }, "pages"],
    [{ packs: { mat: 2 } }, "mat"],
    [{ tools: { needle: 2 } }, "needle"],
    [{ tools: { mat: 0 } }, "0"],
    [{ sessions: [{ minutes: 60, aside: 30, buffer: 30 }] }, "session"],
  ])("is told of where it is wrong: %j", (changes, word) => {
    const [message, ...more] = messagesOfClass({ ...smallClass(), ...changes });
    expect(more).toEqual([]);
    expect(JSON.stringify(message)).toContain(word);
  });
});

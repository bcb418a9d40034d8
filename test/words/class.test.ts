import { describe, expect, it } from "vitest";
import type { SeatPart } from "../../src/core/class/class-sheets.ts";
import type { PooledSupply } from "../../src/core/class/pooled-supply.ts";
import type { Remedy } from "../../src/core/class/remedies.ts";
import type { Target } from "../../src/core/class/schedule.ts";
import type { PatternLeaf } from "../../src/core/pattern/pattern.ts";
import { bookText } from "../../src/words/books.ts";
import { reachText, remedyText } from "../../src/words/schedule.ts";
import { otherKitText, seatPartNames, seatPartsText, seatsText } from "../../src/words/seats.ts";
import { shoppingCount, shoppingName, shoppingNeed, shoppingNote } from "../../src/words/shopping.ts";

const BOOK = { leafHeight: 178, leafWidth: 110.5, blockThickness: 9.5, leaves: 96 };

function seatPart(seat: number, changes: Partial<SeatPart> = {}): SeatPart {
  const shape = { count: 1, frame: "own", outlines: [], scores: [], marks: [] } as const;
  return { seat, id: "door", kind: "door", material: "card", ...shape, ...changes };
}

function pooled(changes: Partial<PooledSupply>): PooledSupply {
  return {
    kind: "material",
    id: undefined,
    own: undefined,
    unit: "each",
    sheet: undefined,
    reason: { kind: "seats", seats: 7, of: undefined },
    need: 1,
    stock: 0,
    buy: 1,
    packs: undefined,
    worth: undefined,
    toPay: undefined,
    shares: new Map(),
    ...changes,
  };
}

describe("bookText(book, units)", () => {
  it("is the book in a line, with what is unusual", () => {
    expect(bookText(BOOK, "mm")).toBe("178 × 110.5\u00a0mm, 96 leaves, 9.5\u00a0mm thick");
    const rare = { ...BOOK, direction: "rtl", plates: [{ afterPage: 8, leaves: 1 }] } as const;
    expect(bookText(rare, "mm")).toMatch(/, reads right to left, one plate$/);
    expect(bookText({ ...BOOK, leafHeight: 203.2, leafWidth: 127 }, "in")).toMatch(/^8 × 5\u00a0in, /);
  });
});

describe("seatsText(numbers)", () => {
  it("names one seat, or several", () => {
    expect(seatsText([3])).toBe("seat 3");
    expect(seatsText([2, 8])).toBe("seats 2 and 8");
    expect(seatsText([1, 3, 4])).toMatch(/^seats 1, 3,? and 4$/);
  });
});

describe("seatPartsText(parts)", () => {
  it("names each part with its seat, a motif by its author's word", () => {
    const gull = seatPart(2, { id: "motif-gull", kind: "motif", motif: "gull" });
    expect(seatPartsText([seatPart(8), gull])).toBe("seat 8: door, seat 2: motif gull");
  });
});

describe("otherKitText(kit)", () => {
  it("is a whole sentence, with a change and without", () => {
    expect(otherKitText({ title: "Little Gull", change: undefined })).toBe(
      "Choose Little Gull instead: it fits as it is.",
    );
    expect(otherKitText({ title: "Little Gull", change: "Make the picture 105 mm tall" })).toBe(
      "Choose Little Gull instead. Make the picture 105 mm tall.",
    );
  });
});

describe("a line of the shopping list", () => {
  it("is named in the number of what is needed", () => {
    expect(shoppingName(pooled({ id: "blades", need: 28 }))).toBe("craft-knife blades");
    expect(shoppingName(pooled({ id: "blades", need: 1 }))).toBe("craft-knife blade");
    expect(shoppingName(pooled({ id: "paper", unit: "sheet" }))).toBe("paper");
    expect(shoppingName(pooled({ own: { item: "moss", unit: "handfuls" }, unit: undefined }))).toBe("moss");
  });

  it("says how much is needed, in its unit", () => {
    expect(shoppingNeed(pooled({ id: "blades", need: 28 }))).toBe("28");
    expect(shoppingNeed(pooled({ id: "card", unit: "sheet", sheet: "A4", need: 4 }))).toBe("4 A4 sheets");
    expect(shoppingNeed(pooled({ id: "card", unit: "sheet", sheet: "A4", need: 1 }))).toBe("1 A4 sheet");
    expect(shoppingNeed(pooled({ id: "tape", unit: "m", need: 1.9 }))).toBe("1.9 m");
    expect(shoppingNeed(pooled({ id: "cells", unit: "set", need: 2 }))).toBe("2 sets");
    const own = { item: "moss", unit: "handfuls" };
    expect(shoppingNeed(pooled({ own, unit: undefined, need: 3 }))).toBe("3 handfuls");
    expect([0, 1.9].map(shoppingCount)).toEqual(["–", "1.9"]);
  });

  it("says which it is and for how many seats, whatever one seat's own book needs", () => {
    const note = (changes: Partial<PooledSupply>): string => shoppingNote(pooled(changes), "mm");
    expect(note({ id: "glueDots" })).toBe("for 7 seats");
    expect(note({ reason: { kind: "seats", seats: 1, of: undefined } })).toBe("for one seat");
    const light = { kind: "light", diameter: 38, height: 45 } as const;
    expect(note({ id: "light", reason: { kind: "seats", seats: 2, of: light } })).toBe(
      "at most 38\u00a0mm wide and 45\u00a0mm tall; measure it; for 2 seats",
    );
    expect(note({ id: "knife", reason: { kind: "seats", seats: 7, of: { kind: "tool" } } })).toBe(
      "with a cap; for 7 seats",
    );
    expect(note({ id: "weight", reason: { kind: "seats", seats: 2, of: { kind: "tool" } } })).toBe("for 2 seats");
    const book = { kind: "book", leaves: 96, leafHeight: 178, leafWidth: 110 } as const;
    expect(note({ id: "book", reason: { kind: "seats", seats: 7, of: book } })).not.toContain("96");
    expect(note({ id: "card", reason: { kind: "packed", tooLarge: [] } })).toBe("packed over all seats");
    expect(note({ id: "card", reason: { kind: "packed", tooLarge: [seatPart(2)] } })).toBe(
      "too small for seat 2: door",
    );
  });
});

describe("reachText(reach, all)", () => {
  const leaf = { leaf: 48, name: { kind: "numbered", recto: 87, verso: 88 } } as unknown as PatternLeaf;
  const reach = (changes: Partial<Target>): string =>
    reachText({ leaf: undefined, leaves: 0, at: "leaf", share: 0, ...changes }, 248);

  it("says where the seat is", () => {
    expect(reach({ at: "scores" })).toBe("pressing score lines");
    expect(reach({})).toBe("score lines pressed");
    expect(reach({ leaf, leaves: 48 })).toBe("48 of 248 leaves, up to leaf 48, p. 87");
    expect(reach({ at: "parts", leaf, leaves: 248 })).toBe("all 248 leaves folded, working on the window");
    expect(reach({ at: "finished", leaf, leaves: 248 })).toBe("finished");
  });
});

describe("remedyText(remedy)", () => {
  it.each<[Remedy, string]>([
    [
      { kind: "leaves-at-home", leaves: 108, scores: false, minutes: 274 },
      "Finish 108 leaves at home with “Work along”: about 4 h 30 min.",
    ],
    [
      { kind: "leaves-at-home", leaves: 1, scores: true, minutes: 20 },
      "Press the score lines and fold one leaf at home with “Work along”: about 15 min.",
    ],
    [{ kind: "window-at-home", minutes: 30 }, "Finish the window at home: about 30 min."],
    [
      { kind: "scores-before", saves: 48, missing: 6.2 },
      "Press its score lines before the class. That saves 48 min; the seat is still 7 min short.",
    ],
    [
      { kind: "parts-before", saves: 48, missing: 0 },
      "Cut its window parts before the class. That saves 48 min, enough to finish.",
    ],
    [{ kind: "both-before", missing: 0 }, "Do both. That is enough to finish."],
    [{ kind: "more-sessions", sessions: 1 }, "Add a session like the last one."],
    [{ kind: "more-sessions", sessions: 3 }, "Add 3 sessions like the last one."],
  ])("says %j", (remedy, text) => {
    expect(remedyText(remedy)).toBe(text);
  });
});

describe("seatPartNames(part)", () => {
  it.each([
    [undefined, ["2 door", "2"]],
    [
      [2, 5, 7, 8],
      ["2, 5, 7, 8 door", "2, 5, 7, 8"],
    ],
    [
      [2, 5, 7, 8, 9],
      ["2 and 4 more door", "2 and 4 more"],
    ],
  ])("of a part that is shared by %j", (sharedBy, names) => {
    expect(seatPartNames(seatPart(2, sharedBy ? { sharedBy } : {}))).toEqual(names);
  });
});

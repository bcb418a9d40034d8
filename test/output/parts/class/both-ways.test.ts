import { describe, expect, it } from "vitest";
import { patternAnyKit } from "../../../../src/build/library/pattern-kit.ts";
import { classPage } from "../../../../src/output/parts/class/class-page.ts";
import { seatPacket } from "../../../../src/output/parts/class/seat-packet.ts";
import { seatPage } from "../../../../src/output/parts/class/seat-page.ts";
import { supervisionSection } from "../../../../src/output/parts/class/supervision.ts";
import { takeHome } from "../../../../src/output/parts/class/take-home.ts";
import { teacherPacket } from "../../../../src/output/parts/class/teacher-packet.ts";
import { html } from "../../../../src/output/parts/markup.ts";
import { viewAnyKit } from "../../../../src/output/views/any-kit-view.ts";
import { type ClassView, viewClass } from "../../../../src/output/views/class/class-view.ts";
import { KITS, readMadeClass, smallClass } from "../../../core/class/made-class.ts";

const CAUTIONS = [
  { id: "who", title: "Children", text: "Look after them.", short: "Look.", when: "always" },
  { id: "blade", title: "Blades", text: "Cut away from yourself.", short: "Cut away.", when: "cuts" },
] as const;

const BOOK = { leafHeight: 178, leafWidth: 108, blockThickness: 12.5, leaves: 112, pageOneLeaf: 3 };
const FOLDS = { foldStyle: "corner" };

function viewed(seats: readonly object[], more: object = {}): ClassView {
  const plan = readMadeClass({ ...smallClass(), seats, ...more });
  const gull = KITS[0]!;
  const view = viewAnyKit(patternAnyKit({ kit: gull, pictureNotes: [] } as never), CAUTIONS);
  return viewClass(plan, [view], CAUTIONS);
}

const BOTH = viewed([
  { seat: 1, book: BOOK },
  { seat: 2, book: BOOK, fit: FOLDS },
]);
const ALONE = viewed([{ seat: 1, book: BOOK, fit: FOLDS }], { places: 1 });
/** What is read: no markup. */
const read = (markup: unknown): string =>
  String(markup)
    .replaceAll("\u00a0", " ")
    .replace(/<svg[\s\S]*?<\/svg>/g, "")
    .replace(/<[^>]*>/g, "|");
const boxes = (markup: string): number => markup.split('<span class="box">').length - 1;

describe("pages of a class with both ways", () => {
  it("tell which seat works without a knife", () => {
    const page = String(classPage(BOTH, html``, (target) => target));
    const [, cutting, folding] = page.split('<li class="seat">');
    expect(cutting).not.toContain("without a knife");
    expect(folding).toContain("without a knife");
    const [cuts, folds] = BOTH.seats.map((seat) => read(seatPage(seat, BOTH)));
    expect(cuts).not.toContain("without a knife");
    expect(folds).toContain("This seat works without a knife");
    expect(folds).toMatch(/no cut, \d+ folds/);
  });

  it.each(["compact", "whole", "bench"])("give each seat the packet of its way, in the %s edition", (packet) => {
    const { plan, seats } = BOTH;
    const [cuts, folds] = seats.map((seat) => String(seatPacket(seat, seat.inClass!, { ...plan, packet } as never)));
    expect(folds).toContain("corner-gauge");
    expect(folds).toContain("corner-batches");
    expect(read(folds)).not.toMatch(/(?<!without a |no )knife|blade|cutting mat/i);
    expect(cuts).not.toContain("corner-gauge");
    expect(read(cuts)).toMatch(/knife/);
  });

  it("hand out the steps of each way, and cautions of what is made", () => {
    expect(BOTH.handouts.map(({ name, view }) => [name, view.way])).toEqual([
      ["Little Gull", "cut"],
      ["Little Gull, without a knife", "corner"],
    ]);
    expect(BOTH.cautions.map(({ id }) => id)).toEqual(["who", "blade"]);
    expect(ALONE.handouts.map(({ view }) => view.way)).toEqual(["corner"]);
    expect(ALONE.cautions.map(({ id }) => id)).toEqual(["who"]);
    expect(read(teacherPacket(ALONE))).not.toMatch(
      /knives|blades|Cut away|a mat|glue gun|scoring gauge|background line/,
    );
    const [cuts, folds] = read(teacherPacket(BOTH)).split("Little Gull, without a knife: the steps");
    expect(cuts).toContain("before the picture at the background line");
    expect(folds).toContain("before the picture over the folding card");
    expect(folds).not.toContain("background line");
  });

  it("lay out the room so that who folds sits away from blades, and buy scissors for the card", () => {
    expect(read(teacherPacket(BOTH))).toContain(
      "Set who works without a knife an arm’s length from every blade: seat 2.",
    );
    expect(read(teacherPacket(ALONE))).not.toContain("arm’s length");
    expect(read(teacherPacket(ALONE))).toContain("to cut out what is of card; no leaf is cut");
    // One pair of scissors of the two may be for leaves.
    expect(read(teacherPacket(BOTH))).not.toContain("no leaf is cut");
  });

  it("count knives for seats that have one", () => {
    // Out and back for the seat that cuts, and a box for the glue guns.
    expect(boxes(String(supervisionSection(BOTH)))).toBe(3);
    expect(read(supervisionSection(ALONE))).toContain("No seat of this class has a knife");
  });

  it("send no gauge for blades home", () => {
    const slips = String(takeHome(BOTH)).split("<article");
    expect(read(slips[1])).toContain("No loose blades");
    expect(read(slips[2])).toContain("corner gauge");
    expect(read(slips[2])).not.toContain("blades");
  });

  it("say of a seat whose book is still to come that it will fold", () => {
    const view = viewed([{ seat: 2, fit: FOLDS }], { places: 2 });
    expect(view.seats.map(({ knifeFree }) => knifeFree)).toEqual([false, true]);
    expect(String(seatPage(view.seats[1]!, view))).toContain("seat=2&amp;kit=little-gull&amp;way=corner");
    expect(String(seatPage(view.seats[0]!, view))).not.toContain("way=corner");
  });
});

import { describe, expect, it } from "vitest";
import { classPage } from "../../../../src/output/parts/class/class-page.ts";
import { seatPacket } from "../../../../src/output/parts/class/seat-packet.ts";
import { teacherPacket } from "../../../../src/output/parts/class/teacher-packet.ts";
import { html } from "../../../../src/output/parts/markup.ts";
import { readFixtureClass } from "../../../core/class/made-class.ts";
import { fixtureClassView } from "./made-view.ts";

/** Seat 2's packet: the moon with window and light. */
function packet(changes: object = {}): string {
  const seats = readFixtureClass().seats.filter(({ number }) => number === 2);
  const view = fixtureClassView({ seats, ...changes });
  const seat = view.seats.find(({ number }) => number === 2)!;
  return String(seatPacket(seat, seat.inClass!, view.plan)).replaceAll("\u00a0", " ");
}
const count = (text: string, wanted: string): number => text.split(wanted).length - 1;
/** What is read: no markup. */
const read = (text: string): string => text.replace(/<svg[\s\S]*?<\/svg>/g, "").replace(/<[^>]*>/g, "|");

describe("seatPacket(seat, view, plan)", () => {
  it("is the table in short with seat, book, supplies and gauge, unless the class says otherwise", () => {
    const short = packet({ packet: "compact" });
    expect(short).toContain('<div class="batches compact">');
    expect(read(short)).toContain("Seat 2 · Winter evenings at the harbour library");
    expect(short).not.toMatch(/class="steps"|cover-picture|data-sheet="strips"/);
    const whole = packet({ packet: "whole" });
    expect(whole).toContain('<div class="batches normal">');
    for (const part of ['class="steps"', "cover-picture", 'data-sheet="strips"']) expect(whole).toContain(part);
  });

  it.each(["compact", "whole"])("has no step, supply and page of what is ready, in the %s edition", (edition) => {
    const pages = (ready: readonly string[]) => count(packet({ packet: edition, ready }), "true-scale");
    expect(pages(["scores"])).toBeLessThan(pages([]));
    expect(pages(["parts"])).toBeLessThan(pages([]));
    const text = read(packet({ packet: edition, ready: ["parts"] }));
    expect(text).toContain("your window’s parts, cut out");
    expect(text).not.toMatch(/Cut the window|acetate/);
  });

  it("tells apart what one brings and what is there, and prices nothing", () => {
    const bring = ["bone folder", "reading glasses"];
    const text = read(packet({ bring, brought: ["boneFolder"] }));
    const [, own, there] = /You bring([\s\S]*?)There in the class([\s\S]*?)The book/.exec(`${text}The book`)!;
    for (const thing of ["book", "bone folder", "reading glasses"]) expect(own).toContain(thing);
    expect(there).not.toContain("bone folder");
    expect(text).not.toMatch(/€|EUR/);
  });

  it("has the hours that the roster has", () => {
    const view = fixtureClassView();
    for (const { inClass, hours } of view.seats) if (inClass) expect(inClass.figures.hours).toBe(hours);
  });
});

describe("a class", () => {
  it("tells on its page what is there for students, and takes what they bring off the list", () => {
    const bring = ["bone folder"];
    const plan = { bring, brought: ["boneFolder"] };
    const page = (changes: object) =>
      String(classPage(fixtureClassView(changes), html``, (target) => target)).replaceAll("\u00a0", " ");
    expect(page({})).toMatch(/In the class you find [^<]*bone folder/);
    expect(page(plan)).not.toMatch(/In the class you find [^<]*bone folder/);
    const list = (changes: object) => fixtureClassView(changes).shopping.map(({ name }) => name);
    expect(list({}).join()).toMatch(/bone folder/);
    expect(list(plan).join()).not.toMatch(/bone folder/);
    expect(readFixtureClass().brought).toEqual([]);
  });

  it("has handouts that follow its kits' cutting tool, folds and tacks", () => {
    const handouts = (fit: object) => {
      const view = fixtureClassView();
      const own = view.handouts.map((one) => ({
        ...one,
        view: Object.create(one.view, { kit: { value: { ...one.view.kit, fit: { ...one.view.kit.fit, ...fit } } } }),
      }));
      return read(String(teacherPacket(Object.create(view, { handouts: { value: own } }))));
    };
    expect(handouts({ cutWith: "scissors" })).toContain("with short sharp scissors, one or two leaves at a time");
    expect(handouts({ cutWith: "knife" })).toContain("with the knife, a mat under the leaf");
    expect(handouts({ foldStyle: "stepped" })).toContain("Fold the whole leaf at the front line.");
    expect(handouts({ tackWith: "glue" })).toContain("Use a pin-head of glue, with a slip of baking paper behind it.");
  });
});

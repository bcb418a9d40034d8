import { describe, expect, it } from "vitest";
import { fitSeat, fitSeats, onKit } from "../../../src/core/class/fit-seats.ts";
import type { Seat } from "../../../src/core/class/kit-class.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { madeKit } from "../kit/made-kit.ts";

const KIT = madeKit();

const seat = (number: number, refit: Refit = {}, kit: Kit = KIT): Seat => ({
  number,
  kit,
  book: refit,
  bookIn: "matter",
  refit,
  pace: 1,
});

/** A leaf so narrow that no flap of the made kit lies on it as it is, see the offers by hand. */
const NARROW = { leafWidth: 40 };
const shallow = (slug: string, depths: readonly [number, number]): Kit =>
  madeKit({ slug, levels: KIT.levels.map((level, i) => ({ ...level, depth: depths[i]! })), gaugeLines: depths });

describe("fitSeats(seats, kits, offered)", () => {
  const { fitting, misfits } = fitSeats([seat(1), seat(2, NARROW), seat(3, { leafHeight: 130 })], [KIT]);

  it("fits every seat, whatever another does not fit", () => {
    expect(fitting.map((one) => one.seat.number)).toEqual([1, 3]);
    expect(misfits.map((one) => one.seat.number)).toEqual([2]);
    expect(fitting[1]!.kit.book.leafHeight).toBe(130);
    expect(fitting[1]!.pattern.book.leafHeight).toBe(130);
    expect(fitting[1]!.seat.kit.book.leafHeight).toBe(120);
  });

  it("counts each seat's work", () => {
    // All 40 leaves are folded; a minute is 10 leaves at 6 seconds.
    expect(fitting[0]!.counts.leaves).toBe(40);
    expect(fitting[0]!.effort.byStage.turn).toBe(4);
  });

  it("tells a misfit why and what helps", () => {
    expect(misfits[0]!.failure).toMatchObject({ kind: "flap-in-gutter", level: 2, deepest: 17.5 });
    expect(misfits[0]!.offers.map(({ says }) => says[0]!.kind)).toEqual(["depths", "folds"]);
  });

  it("writes offers in the class's units, and otherwise in the kit's", () => {
    const depths = (told?: { units: "in" }) => {
      const [offer] = fitSeats([seat(2, NARROW)], [KIT], told).misfits[0]!.offers;
      return offer!.refit.depths;
    };
    expect(depths()).toEqual([9, 17.5]);
    // By hand: 32nds; 17.5 mm are 22.05 of them, and 0.87 of 10 mm is 10.96.
    const inches = [11, 22].map((parts) => expect.closeTo((parts * 25.4) / 32, 9));
    expect(depths({ units: "in" })).toEqual(inches);
    expect(fitSeats([seat(2, NARROW)], [KIT], { units: "in" }).misfits[0]!.seat.kit.units).toBe("in");
  });

  it("names substitute books that carry the kit as it is", () => {
    const spares = [
      { label: "narrow", book: NARROW },
      { label: "wide", book: { leafWidth: 140 } },
      { label: "blue", book: {} },
    ];
    const [{ spares: found }] = fitSeats([seat(2, NARROW)], [KIT], { spares }).misfits as [(typeof misfits)[0]];
    expect(found.map(({ label }) => label)).toEqual(["wide", "blue"]);
    expect(misfits[0]!.spares).toEqual([]);
  });

  it("names other kits that the book carries, as they are or with the first change that helps", () => {
    const easy = shallow("easy", [8, 16]);
    const hard = shallow("hard", [30, 70]);
    const near = shallow("near", [9, 18]);
    const [{ otherKits }] = fitSeats([seat(2, NARROW)], [KIT, easy, hard, near]).misfits as [(typeof misfits)[0]];
    expect(otherKits.map(({ kit, offer }) => [kit.slug, offer?.says.map(({ kind }) => kind)])).toEqual([
      ["easy", undefined],
      ["near", ["depths"]],
    ]);
  });

  it("takes no other kit's own borders or depths along", () => {
    const book = { leafWidth: 40 };
    const own = { ...seat(2, { ...book, depths: [20, 34] }), book };
    const easy = shallow("easy", [8, 16]);
    expect(fitSeats([own], [KIT, easy]).misfits[0]!.otherKits).toEqual([{ kit: easy, offer: undefined }]);
  });
});

describe("fitSeat(seat) and onKit(seat, kit)", () => {
  it("is the kit in the seat's book, or why not", () => {
    expect(fitSeat(seat(2, NARROW))).toEqual({ failure: expect.objectContaining({ kind: "flap-in-gutter" }) });
    expect(fitSeat(seat(1))).toMatchObject({ seat: { number: 1 }, findings: [] });
  });

  it("puts the seat's whole book under another kit, and nothing else of its own", () => {
    const other = madeKit({ slug: "other" });
    const one = { ...seat(4, { depths: [3, 9], leafWidth: 60 }), book: { leafWidth: 60 }, pace: 1.5 };
    expect(onKit(one, other)).toEqual({
      number: 4,
      kit: other,
      bookIn: "matter",
      book: { leafWidth: 60 },
      refit: { leafWidth: 60 },
      pace: 1.5,
    });
  });
});

import { describe, expect, it } from "vitest";
import { type Doubt, isGrave } from "../../../src/core/findings/doubt.ts";
import { type Failure, isContradiction, isOfLight } from "../../../src/core/findings/failure.ts";
import { isFailure } from "../../../src/core/findings/outcome.ts";

const GRAVE: Readonly<Record<Doubt["kind"], boolean>> = {
  caliper: true,
  "unnumbered-leaves": true,
  "springs-open": true,
  coarse: true,
  "out-of-shape": true,
  striped: true,
  "narrow-floor": true,
  "light-wider-than-hole": true,
  "level-out-of-reach": false,
  "merged-spans": false,
  "left-without-knife": false,
  "levels-left-out": false,
  turns: false,
  "unseen-parts": false,
  "steep-creases": false,
  "off-centre": false,
};

const OF_LIGHT: Readonly<Record<Failure["kind"], boolean>> = {
  "pages-need-more-leaves": false,
  "no-page": false,
  "plates-after-last-page": false,
  "too-few-leaves": false,
  "levels-out-of-order": false,
  "flap-in-gutter": false,
  "needs-knife": false,
  "background-shown": false,
  "no-room-for-corners": false,
  "nothing-to-show": false,
  "opening-too-wide": false,
  "picture-off-leaf": false,
  "picture-too-narrow": false,
  "picture-too-wide": false,
  "leaves-show-too-little": false,
  "lost-leaf-outside": false,
  "too-few-remain": false,
  "picture-flat": false,
  "no-room-for-light": true,
  "light-near-window": true,
  "outline-hidden": false,
  "hole-breaks": false,
  "no-hinge": false,
  "glazing-too-small": false,
};

const CONTRADICTIONS = ["pages-need-more-leaves", "no-page", "plates-after-last-page"];

// By definition: grave is what says that a book was measured wrong or will not carry the piece well.
describe("findings", () => {
  it.each(Object.entries(GRAVE))("%s is grave: %s", (kind, grave) => {
    expect(isGrave({ kind } as Doubt)).toBe(grave);
  });

  it.each(Object.entries(OF_LIGHT))("%s is of the light: %s", (kind, ofLight) => {
    expect(isOfLight({ kind } as Failure)).toBe(ofLight);
  });

  it.each(Object.keys(OF_LIGHT))("%s contradicts the book's other figures or not", (kind) => {
    expect(isContradiction({ kind } as Failure)).toBe(CONTRADICTIONS.includes(kind));
  });

  it("an outcome is a failure or a value, also an empty one", () => {
    expect(isFailure({ failure: { kind: "outline-hidden", level: 1 } })).toBe(true);
    expect(isFailure({ value: undefined })).toBe(false);
  });
});

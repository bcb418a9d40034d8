import { describe, expect, it } from "vitest";
import type { Field } from "../../../src/core/refit/field.ts";
import { fieldsOf } from "../../../src/core/refit/fields.ts";
import { readField } from "../../../src/core/refit/read-field.ts";
import { madeKit } from "../kit/made-kit.ts";

const KIT = madeKit({ fit: { shape: { solve: "pictureLeaves", height: 40, opening: 1 } } });
const INCHES = { ...KIT, units: "in" as const };

function field(name: string): Field {
  return fieldsOf(KIT).find((one) => one.name === name)!;
}

describe("readField(field, text, kit)", () => {
  // The inch is 25.4 mm exactly (1959); the sums are by hand.
  it.each([
    ["mm", "210", 210],
    ["mm", " 210 ", 210],
    ["mm", "21 cm", 210],
    ["mm", "210,5", 210.5],
    ["mm", "8 1/2 in", 215.9],
    ["mm", "8½ in", 215.9],
    ["mm", "8-1/2 in", 215.9],
    ["mm", "8 inches", 203.2],
    ["mm", "8 inch", 203.2],
    ["in", "8", 203.2],
    ["in", "8 1/2", 215.9],
    ["in", "8½", 215.9],
    ["in", "8,5", 215.9],
    ["in", "8-1/2", 215.9],
    ["in", "210 mm", 210],
    ["mm", "40", 40],
    ["mm", "600", 600],
  ] as const)("reads the length of a kit in %s: %j", (units, text, mm) => {
    const kit = units === "in" ? INCHES : KIT;
    expect(readField(field("leafHeight"), text, kit)).toEqual({ refit: { leafHeight: mm } });
  });

  it.each(["", "high", "12 ft", "8,5,5", "1-2", "1/0 in"])("reads no length in %j", (text) => {
    expect(readField(field("leafHeight"), text, KIT)).toEqual({ fault: { kind: "no-length" } });
  });

  it.each(["39.9", "600.1", "-50", "0"])("tells the bounds to a length outside them: %s", (text) => {
    const fault = { kind: "length-outside", least: 40, most: 600 };
    expect(readField(field("leafHeight"), text, KIT)).toEqual({ fault });
  });

  it("reads a depth together with the depths of the other levels", () => {
    expect(readField(field("depth1"), "22", KIT)).toEqual({ refit: { depths: [10, 22] } });
  });

  it.each([
    ["4", 4],
    [" 180 ", 180],
    ["3000", 3000],
  ])("reads a count: %j", (text, leaves) => {
    expect(readField(field("leaves"), text, KIT)).toEqual({ refit: { leaves } });
  });

  it.each(["3", "3001", "12.5", "", "many", "90°", "0x10", "1e3", "+90", "९०", "９０", "Infinity"])(
    "tells the bounds to what is no count: %j",
    (text) => {
      expect(readField(field("leaves"), text, KIT)).toEqual({ fault: { kind: "count-outside", least: 4, most: 3000 } });
    },
  );

  it.each([
    ["5", 5],
    ["62.5", 62.5],
    ["90°", 90],
    [" 90 ° ", 90],
    ["180", 180],
  ])("reads degrees: %j", (text, openingDegrees) => {
    expect(readField(field("openingDegrees"), text, KIT)).toEqual({ refit: { openingDegrees } });
  });

  it.each(["4.9", "180.1", "", "wide", "90 mm"])("tells the bounds to what are no degrees: %j", (text) => {
    const fault = { kind: "degrees-outside", least: 5, most: 180 };
    expect(readField(field("openingDegrees"), text, KIT)).toEqual({ fault });
  });

  it.each([
    ["direction", "rtl", { direction: "rtl" }],
    ["foldStyle", "stepped", { foldStyle: "stepped" }],
    ["plates", "", { plates: [] }],
    ["borderLeaves", "0,1000", { borderLeaves: [0, 1000] }],
    ["plates", "10000 × 500", { plates: [{ afterPage: 10000, leaves: 500 }] }],
    ["plates", "20 × 4", { plates: [{ afterPage: 20, leaves: 4 }] }],
    ["borderLeaves", "4,6", { borderLeaves: [4, 6] }],
    ["borderLeaves", " 0 , 12 ", { borderLeaves: [0, 12] }],
  ])("reads %s: %j", (name, text, refit) => {
    expect(readField(field(name), text, KIT)).toEqual({ refit });
  });

  it("takes no other word than those of a choice", () => {
    const fault = { kind: "no-option", options: ["ltr", "rtl"] };
    expect(readField(field("direction"), "up", KIT)).toEqual({ fault });
  });

  it.each([
    ["plates", "twenty", "no-plates"],
    ["borderLeaves", "4", "no-borders"],
    ["borderLeaves", "4,-6", "no-borders"],
    ["borderLeaves", "4,6,8", "no-borders"],
    ["borderLeaves", "4,1001", "no-borders"],
    ["borderLeaves", "4,6.5", "no-borders"],
    ["plates", "20 × 501", "no-plates"],
    ["plates", "10001 × 1", "no-plates"],
    ["plates", "0 × 1", "no-plates"],
  ])("reads no %s in %j", (name, text, kind) => {
    expect(readField(field(name), text, KIT)).toEqual({ fault: { kind } });
  });
});

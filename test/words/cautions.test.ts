import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readCautions } from "../../src/input/cautions/read-cautions.ts";

const CAUTIONS = readCautions(join(import.meta.dirname, "../.."), "en");

function caution(id: string): { readonly text: string; readonly short: string } {
  const found = CAUTIONS.filter((one) => one.id === id);
  if (found.length !== 1) throw new Error(`${found.length} cautions ${id}`);
  return found[0]!;
}

/**
 * What a caution must say, each with its source. Most are common practice in schools and workshops; those on cells follow United
 * States law, 16 CFR 1263 and the commission's guidance on it, as public pages quote them; those on flames the labels of EN 15494.
 * The words are our own.
 */
const REQUIRED: readonly (readonly [source: string, id: string, part: "text" | "short", phrase: RegExp])[] = [
  ["school slides on knives", "blade", "text", /\bCut away from your body\b/],
  ["school slides on knives", "blade", "short", /\bCut away from your body\b/],
  ["school slides on knives", "blade", "text", /\byour other hand behind the blade\b/],
  ["school slides on knives", "blade", "text", /\bon a mat that lies firm\b/],
  ["school slides on knives", "blade", "short", /\bon a mat\b/],
  ["school slides on knives", "blade", "text", /\bCap the knife whenever you put it down\b/],
  ["school slides on knives", "blade", "short", /\bcap the knife whenever you put it down\b/],
  ["class rules of an art teacher", "blade", "text", /\bChange a blade that drags\b/],
  [
    "class rules of an art teacher",
    "blade",
    "text",
    /\bold blades in a closed container, never straight into the bin\b/,
  ],
  ["class rules of an art teacher", "blade", "text", /\bCount knives out and back in\b/],
  ["rules of a craft centre", "blade", "text", /\bwith a metal safety ruler\b/],
  ["rules of a craft centre", "blade", "short", /\bwith a metal safety ruler\b/],
  ["rules of a craft centre", "blade", "text", /\bTuck your fingers back\b/],
  ["rules of a craft centre", "blade", "text", /\ban arm’s length round everyone who cuts\b/],
  [
    "common practice, no source",
    "blade",
    "text",
    /\bcut beside you, and never let the blade run at the holding hand\b/,
  ],
  ["common practice, no source", "blade", "text", /\bKeep a first-aid kit at hand\b/],
  ["common practice, no source", "cell", "text", /\bAfter display, take the cells out and recycle them\b/],
  ["a teachers' college", "who", "text", /\bbeside a competent adult\b/],
  ["a teachers' college", "who", "short", /\bbeside a competent adult\b/],
  // Who has neither knife nor glue is told of neither: each stands with its own caution.
  ["a teachers' college", "blade", "text", /\badult does the cutting or stands beside everyone who holds a knife\b/],
  ["a teachers' college", "glue", "text", /\bglue gun\b.*\badult stands beside everyone who holds one\b/],
  ["common practice, no source", "who", "text", /\bFor small children, an adult cuts out what is of card\b/],
  ["schools' sheets on glue guns", "glue", "text", /\bA glue gun burns, even a low-temperature one\b/],
  ["schools' sheets on glue guns", "glue", "short", /\bA glue gun burns even when set low\b/],
  ["schools' sheets on glue guns", "glue", "text", /\bnozzle down on a stand\b/],
  ["schools' sheets on glue guns", "glue", "short", /\bnozzle down\b/],
  ["schools' sheets on glue guns", "glue", "text", /\bkeep fingers off the glue\b/],
  ["schools' sheets on glue guns", "glue", "short", /\bkeep fingers off the glue\b/],
  ["schools' sheets on glue guns", "glue", "text", /\bhave cold water near\b/],
  ["schools' sheets on glue guns", "glue", "short", /\bhave cold water near\b/],
  ["EN 15494, not near what can catch fire", "flame", "text", /\bA folded book is dry paper\b/],
  ["EN 15494, not near what can catch fire", "flame", "text", /\bPut nothing in or near it that burns or grows hot\b/],
  ["EN 15494, not near what can catch fire", "flame", "text", /\bno candle, no match\b/],
  [
    "EN 15494, not near what can catch fire",
    "flame",
    "short",
    /\bNo candle, match or lamp bulb in or near a folded book\b/,
  ],
  ["EN 15494, never unattended", "flame", "text", /\bswitch it off when you leave the room\b/],
  ["EN 15494, not near what can catch fire", "flame", "text", /\bbattery LED only\b/],
  ["EN 15494, not near what can catch fire", "flame", "short", /\bBattery LED only\b/],
  ["16 CFR 1263.4, signal word", "cell", "text", /^WARNING: ingestion hazard\b/],
  ["16 CFR 1263.4, hazard", "cell", "text", /\bswallowed coin cell can cause death or serious injury\b/],
  ["16 CFR 1263.4, children", "cell", "text", /\bKeep new and used cells away from children\b/],
  ["16 CFR 1263.4, children", "cell", "short", /\bKeep new and used coin cells away from children\b/],
  [
    "16 CFR 1263.4, help",
    "cell",
    "text",
    /\bIf a cell is swallowed or put into any part of the body, call your emergency number at once\b/,
  ],
  [
    "16 CFR 1263.4, help",
    "cell",
    "short",
    /\bIf one is swallowed or put into the body, call your emergency number at once\b/,
  ],
  ["guidance on battery compartments", "cell", "text", /\bbattery door closes with a screw\b/],
  ["guidance on battery compartments", "cell", "short", /\bCheck that the battery door’s screw is tight\b/],
  [
    "small parts, EN 71-1: a cell fits the cylinder",
    "cell",
    "text",
    /\bpocket is not a battery door and never holds a bare cell\b/,
  ],
  ["a school workshop's safety page", "cell", "text", /\badults load them, and count them in and out\b/],
];

/** What no caution may say, however it is worded. */
const REVERSED = [
  /\btowards? (your|the|you)\b/i,
  /\b(candles?|match(es)?|flames?|bulbs?)\b[^.]*\b(is|are) (fine|safe|allowed|all right)\b/i,
  /\b(use|light|put|place|set)\b (a|the|your) (candle|match|tealight|lamp bulb)\b/i,
  /\b(leave|keep) (the|your) (knife|blade) (open|uncapped)\b/i,
  /\b(not|never) (cap|count|change|keep|rest)\b/i,
  /\b(no|without (a|an)) (adult|mat|screw|ruler)\b/i,
];

describe("the English cautions", () => {
  it.each(REQUIRED)("say what is required (%s): %s, %s %s", (_, id, part, phrase) => {
    expect(caution(id)[part].replaceAll(/\s+/g, " ")).toMatch(phrase);
  });

  it("say nothing of it the other way round", () => {
    for (const { id, text, short } of CAUTIONS)
      for (const reversed of REVERSED) expect(`${id}: ${text} ${short}`).not.toMatch(reversed);
  });

  // Ages are weakly sourced and left to the house; emergency numbers differ between countries.
  it("name neither an age nor a country's telephone number", () => {
    for (const { text, short } of CAUTIONS) expect(`${text} ${short}`).not.toMatch(/\d/);
  });

  it("are shown where they are called for", () => {
    expect(CAUTIONS.map(({ id, when }) => [id, when])).toEqual([
      ["who", "always"],
      ["blade", "cuts"],
      ["glue", "glue"],
      ["flame", "always"],
      ["cell", "light"],
      ["bench", "always"],
    ]);
  });
});

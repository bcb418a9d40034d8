import { describe, expect, it } from "vitest";
import { fromQueryAddress } from "../../src/core/finder/query.ts";
import { fromAddress } from "../../src/core/refit/address.ts";
import { ignoredText } from "../../src/words/fields.ts";
import { leftOutOf } from "../../src/words/finder.ts";
import { fixtureKit } from "../input/kit/kit-folders.ts";
import { OF_FINDER, OF_KIT, VALUES } from "./addresses.ts";

const kit = fixtureKit("harbour-moon");

/** What a page reads of an address, and which of it it tells to be left out. */
const READERS = [
  {
    page: "a kit's page",
    names: OF_KIT,
    leftOut: (address: URLSearchParams) => fromAddress(address, kit).ignored.map((one) => ignoredText(one, kit)),
  },
  {
    page: "the catalogue",
    names: OF_FINDER,
    leftOut: (address: URLSearchParams) => leftOutOf(fromQueryAddress(address)),
  },
];

describe.each(READERS)("a hostile address of $page", ({ names, leftOut }) => {
  it.each(VALUES)("has each figure that is ignored told, once: $value", ({ value, sensible }) => {
    const told = leftOut(new URLSearchParams(names.map((name) => `${name}=${value}`).join("&")));
    const left = names.filter((name) => !(sensible as readonly string[]).includes(name));
    // 12 is also a thickness, a height of the picture, a depth of a third level …: only that nothing breaks is looked at.
    if (!value.includes("&")) expect(told.length).toBe(left.length);
    expect(new Set(told).size).toBe(told.length);
    for (const words of told) expect(words.length).toBeLessThan(250);
  });
});

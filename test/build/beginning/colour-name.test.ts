import { describe, expect, it } from "vitest";
import { colourName } from "../../../src/build/beginning/colour-name.ts";

describe("colourName(hex)", () => {
  // Keywords with these values (CSS Color 4, section 6.1), or their nearest plain word: firebrick is a red.
  it.each([
    ["#ff0000", "red"],
    ["#b22222", "red"],
    ["#ffa500", "orange"],
    ["#8b4513", "brown"],
    ["#8a6d3b", "brown"],
    ["#ffd700", "yellow"],
    ["#ffff00", "yellow"],
    ["#008000", "green"],
    ["#00ff00", "green"],
    ["#40e0d0", "turquoise"],
    ["#0000ff", "blue"],
    ["#000080", "blue"],
    ["#87ceeb", "blue"],
    ["#800080", "purple"],
    ["#ffc0cb", "pink"],
    ["#ff69b4", "pink"],
    ["#000000", "black"],
    ["#808080", "grey"],
    ["#ffffff", "white"],
  ])("calls %s %s", (hex, name) => {
    expect(colourName(hex)).toBe(name);
  });
});

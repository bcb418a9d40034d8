import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { published } from "../core/pattern/published.ts";
import { readMadeKit } from "../input/kit/kit-folders.ts";
import type { KitInput } from "./kit-input.ts";
import { compareWithOracle, expectPattern } from "./oracle.ts";

const ICONS = join(import.meta.dirname, "../../node_modules/@phosphor-icons/core/assets/fill");

// Source: sharp (librsvg), a renderer that shares nothing with the program, reads the columns of real icons
// (Phosphor Icons, MIT) for the oracle.
describe("the pattern of a real icon", () => {
  it.each(["butterfly", "lighthouse", "snowflake", "cat", "gear-six"])("%s is what librsvg paints", async (name) => {
    const svg = readFileSync(join(ICONS, `${name}-fill.svg`), "utf8").replace(/<path /, '<path id="icon" ');
    expect(svg.match(/<path/g)).toHaveLength(1);
    const input: KitInput & { title: string; summary: string } = {
      title: name,
      summary: "An icon.",
      picture: { file: "picture.svg", levels: { icon: ["#icon"] }, crop: "canvas" },
      levels: [
        { name: "icon", depth: 14 },
        { name: "ground", depth: 30, background: true },
      ],
      book: { leafHeight: 210, leafWidth: 140, blockThickness: 20, leaves: 170, pageOneLeaf: 2, lastPage: 330 },
      fit: { borderLeaves: [8, 8], pictureLeaves: "fill", head: 33, height: 140, opening: "solve", leastTab: 2 },
    };
    const pattern = published(readMadeKit(input, svg));
    expect(pattern.leaves.flatMap((leaf) => leaf.cuts).length).toBeGreaterThan(200);
    expect(compareWithOracle(pattern, await expectPattern(input, svg))).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { makeableLines } from "../../../src/build/library/makeable-lines.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitAny } from "../../../src/core/pattern/fit-any.ts";
import { viewCorner } from "../../../src/output/views/corner-view.ts";
import { cornerKit } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";

/** What an author is told of a kit whose corners are folded. */
function told(kit: Kit): string[] {
  const result = fitAny(kit);
  if (!result.fits || !result.pattern.corner) throw new Error("is not folded by corners");
  const { pattern, findings } = result;
  return makeableLines(viewCorner({ kit, pattern, findings, pictureNotes: [] }, []));
}

describe("makeableLines(view)", () => {
  it("tells what helps where corners are longer than the leaf is wide", () => {
    // Corners of 58 mm below the disc, and 50 mm of room.
    const narrow = cornerKit({ book: { leafWidth: 55 }, fit: { flapBulk: 0.4 } }, SILHOUETTES[0]);
    const lines = told(narrow);
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) expect(line).toMatch(/^what helps against .+: [A-Z].+ instead of .+\)\.$/);
  });

  it("tells nothing of a kit that has no trouble", () => {
    expect(told(cornerKit({ fit: { flapBulk: 0.4 } }))).toEqual([]);
  });
});

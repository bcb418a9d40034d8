import { describe, expect, it } from "vitest";
import { CUT_WAY } from "../../../src/core/bench/cut-way.ts";
import { openDesk } from "../../../src/core/bench/desk.ts";
import { beginProgress, type Progress, tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { editionOf } from "../../../src/core/piece/edition.ts";
import { patternFor } from "../../../src/page/bench/newer-kit.ts";
import { keepEdition } from "../../../src/page/pieces/editions.ts";
import { SLANTING } from "../../core/bench/made.ts";
import { valueFrom } from "../../core/findings/made.ts";
import { madePiece } from "../../core/piece/made-piece.ts";
import { fakeStore } from "../pieces/fake-store.ts";

const BEGUN = SLANTING;
const MOVED: Kit = { ...BEGUN, fit: { ...BEGUN.fit, head: (BEGUN.fit.head ?? 0) + 1 } };
const WORDS: Kit = { ...BEGUN, title: "Another title" };
const TOO_SMALL: Kit = { ...BEGUN, book: { ...BEGUN.book, leaves: 4, lastPage: 8 } };

const PROGRESS: Progress = tickUntimed(
  beginProgress({
    kit: BEGUN.slug,
    fit: "",
    revision: valueFrom(openDesk(BEGUN, {}, { units: BEGUN.units, way: CUT_WAY })).progress.revision,
    at: leafNumber(9),
  }),
  [1, 2, 8].map(leafNumber),
);

/** Opens a piece that was begun with `BEGUN`, now that its kit is another. */
async function opened(now: Kit, change: Parameters<typeof madePiece>[0] = {}, isKept = true) {
  const { store } = fakeStore();
  if (isKept) await keepEdition(store, { kit: BEGUN, cautions: [] });
  const piece = madePiece({ kit: BEGUN.slug, progress: PROGRESS, edition: editionOf(BEGUN), ...change });
  const open = async (kit: Kit) => openDesk(kit, {}, { units: kit.units, way: CUT_WAY }, piece.progress);
  return patternFor({ store, data: { kit: now, cautions: [] }, piece, open });
}

describe("a piece whose kit has changed", () => {
  it("is asked nothing while the kit is the one it was begun with", async () => {
    const { newer, data } = await opened(BEGUN);
    expect([newer, data.kit]).toEqual([undefined, BEGUN]);
  });

  it("goes on with the old pattern, and is told which leaves have other marks", async () => {
    const { newer, desk } = await opened(MOVED);
    expect(valueFrom(desk).changedSince).toBe(false);
    expect(newer).toMatchObject({ kind: "other-marks", edition: editionOf(MOVED) });
    if (newer?.kind !== "other-marks") throw new Error("no choice");
    // Border leaves are folded whole, so that nothing on them moves with the picture.
    expect(newer.change.leaves.length).toBeGreaterThan(20);
    expect(newer.change.done).toEqual([8]);
    expect(newer.after.ticks.map(({ leaf }) => leaf)).toEqual([1, 2]);
  });

  it("may change over: the new desk finds nothing changed any more", async () => {
    const { newer } = await opened(MOVED);
    if (newer?.kind !== "other-marks") throw new Error("no choice");
    expect(valueFrom(openDesk(MOVED, {}, { units: MOVED.units, way: CUT_WAY }, newer.after)).changedSince).toBe(false);
  });

  it("takes the newer state by itself where the marks are the same", async () => {
    const { newer, data } = await opened(WORDS);
    expect([newer, data.kit.title]).toEqual([{ kind: "same" }, "Another title"]);
  });

  it("asks no more once its maker decided to stay", async () => {
    const { newer, data } = await opened(MOVED, { declined: editionOf(MOVED) });
    expect(newer).toEqual({ kind: "declined" });
    expect(editionOf(data.kit)).toBe(editionOf(BEGUN));
  });

  it("stays where the newer state does not fit its book", async () => {
    const { newer, desk } = await opened(TOO_SMALL);
    expect(newer).toEqual({ kind: "misfit" });
    expect(valueFrom(desk).plan.stops.length).toBeGreaterThan(20);
  });

  it("is told that the kit has changed where the device does not keep the old state", async () => {
    const { newer, desk } = await opened(MOVED, {}, false);
    expect([newer, valueFrom(desk).changedSince]).toEqual([undefined, true]);
  });
});

import { describe, expect, it } from "vitest";
import { keepHere, type Meeting, meet, takeBeside, takeFile, takeUnknown } from "../../../src/core/piece/meeting.ts";
import { workOn } from "../../../src/core/piece/piece.ts";
import { standingOf } from "../../../src/core/piece/versions.ts";
import { begin } from "../bench/made.ts";
import { madePiece } from "./made-piece.ts";

type Met = Extract<Meeting, { here: unknown }>;

/** Another evening's work on a device. */
const evening = (piece = madePiece(), device = "a", done = 1) =>
  workOn(
    piece,
    { address: "", progress: begin(), summary: { done } },
    { device, now: `2026-10-0${done}T20:00:00.000Z` },
  );

describe("a file's piece and a device's", () => {
  it("are two where the device has none of this id", () => {
    expect(meet([madePiece({ id: "other" })], madePiece()).kind).toBe("unknown");
  });

  it("may be the same, newer, or older", () => {
    const before = madePiece();
    const after = evening(before);
    expect(meet([before], before).kind).toBe("same");
    expect(meet([before], after).kind).toBe("newer");
    expect(meet([after], before).kind).toBe("older");
  });

  it("are apart once both went on, even where both did equally much", () => {
    const before = madePiece();
    expect(meet([evening(before, "phone", 2)], evening(before, "tablet", 2)).kind).toBe("apart");
  });

  const met = (): Met => {
    const before = madePiece();
    return meet([evening(before, "phone", 4)], evening(before, "tablet", 2)) as Met;
  };

  it("lose nothing in silence, whatever is decided: the next file of it is newer than both", () => {
    for (const settled of [takeFile(met(), { device: "phone" }), keepHere(met(), { device: "phone" })]) {
      expect(standingOf(settled.versions, met().file.versions)).toBe("ahead");
      expect(standingOf(settled.versions, met().here.versions)).toBe("ahead");
    }
    expect(takeFile(met(), { device: "phone" }).summary.done).toBe(2);
    expect(keepHere(met(), { device: "phone" }).summary.done).toBe(4);
  });

  it("stand beside each other where both are kept, each with a number of its own", () => {
    const { here, file } = met();
    const beside = takeBeside([here], file, { id: "fresh", device: "phone" });
    expect(beside).toMatchObject({ id: "fresh", number: 2, versions: { phone: 1 }, summary: { done: 2 } });
    expect(meet([here, beside], file).kind).toBe("apart");
  });

  it("keep their numbers apart where an unknown one has a number that is taken", () => {
    const here = madePiece({ id: "mine", number: 1 });
    expect(takeUnknown([here], madePiece({ number: 1 })).number).toBe(2);
    expect(takeUnknown([here], madePiece({ number: 7 })).number).toBe(7);
    expect(takeUnknown([madePiece({ id: "mine", kit: "other", number: 1 })], madePiece()).number).toBe(1);
  });

  it("keeps the device's number when the file's is taken", () => {
    const { here, file } = met();
    expect(takeFile({ here: { ...here, number: 5 }, file }, { device: "phone" }).number).toBe(5);
  });
});

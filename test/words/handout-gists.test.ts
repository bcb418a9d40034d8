import { describe, expect, it } from "vitest";
import { PLAIN_CORNERS } from "../../src/core/kit/corner-wish.ts";
import { handoutGist } from "../../src/words/handout-gists.ts";
import { madeKit } from "../core/kit/made-kit.ts";

describe("handoutGist(id, kit)", () => {
  const corners = (empty: "line" | "half" | "middle") =>
    madeKit({ fit: { foldStyle: "corner", corner: { ...PLAIN_CORNERS, empty } } });

  it.each(["line", "half"] as const)(
    "has whole leaves folded over the card where empty ones are folded at a %s",
    (empty) => {
      const kit = corners(empty);
      expect(handoutGist("borderBefore", kit)).toMatch(/over the folding card/);
      expect(handoutGist("borderAfter", kit)).toMatch(/over the folding card/);
      expect(handoutGist("cornerGauge", kit)).toMatch(/folding card/);
    },
  );

  it("names no folding card where both corners go to the middle", () => {
    const told = (["cornerGauge", "borderBefore", "borderAfter"] as const).map((id) =>
      handoutGist(id, corners("middle")),
    );
    expect(told.join(" ")).not.toMatch(/folding card|background line/);
    expect(told[1]).toMatch(/both corners/);
  });

  it("leaves cut kits their line", () => {
    expect(handoutGist("borderBefore", madeKit())).toMatch(/at the background line/);
  });
});

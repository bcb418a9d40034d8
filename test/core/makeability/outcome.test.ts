import { describe, expect, it } from "vitest";
import type { Doubt } from "../../../src/core/findings/doubt.ts";
import { outcomeOf } from "../../../src/core/makeability/outcome.ts";
import type { Trouble } from "../../../src/core/makeability/trouble.ts";
import { madeKit } from "../kit/made-kit.ts";
import { fitting } from "./assessed.ts";

const kit = madeKit();
const { pattern } = fitting(kit);

const outcome = (troubles: readonly Trouble[], findings: readonly Doubt[] = []) =>
  outcomeOf(kit, { pattern, findings }, troubles);

const slivers = { kind: "slivers", strips: 4, places: 2, most: 1 } as const;

describe("outcomeOf(kit, fit, troubles)", () => {
  it.each<[Trouble, string]>([
    [{ kind: "hidden", level: 2, figure: 0.3, share: 0.7 }, "fits"],
    [{ kind: "hidden", level: 2, figure: 0.4, share: 0.6 }, "check"],
    [{ kind: "out-of-reach", level: 2, figure: 4 }, "fits"],
    [{ kind: "out-of-reach", level: 2, figure: 6 }, "check"],
    [{ ...slivers, figure: 0.01, share: 0.05 }, "fits"],
    [{ ...slivers, figure: 0.01, share: 0.2 }, "check"],
    [{ ...slivers, figure: 0.001, share: 0.2 }, "fits"],
    [{ ...slivers, figure: 0.03, share: 0.05 }, "check"],
    [{ kind: "narrow", figure: 3, unseen: 0, pitch: 0.8 }, "fits"],
    [{ kind: "narrow", figure: 3, unseen: 1, pitch: 0.8 }, "check"],
    [{ kind: "many-cuts", figure: 40, most: 16 }, "fits"],
    [{ kind: "many-cuts", figure: 1, most: 18 }, "check"],
    [{ kind: "springs-open", figure: 0.1, opening: 1, resting: 1.1 }, "check"],
  ])("%j: %s", (trouble, quality) => {
    expect(outcome([trouble])).toBe(quality);
  });

  it("is never better than its fit", () => {
    expect(outcome([])).toBe("fits");
    expect(outcome([], [{ kind: "out-of-shape", stretch: 1.2 }])).toBe("poor");
    expect(outcome([], [{ kind: "out-of-shape", stretch: 1.02 }])).toBe("check");
  });
});

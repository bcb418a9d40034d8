import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { whyNot } from "../../../src/page/bench/why-not.ts";
import { LoadError } from "../../../src/page/shared/load-script.ts";
import { benchMisfitText } from "../../../src/words/findings/bench-misfit.ts";
import { refusalText } from "../../../src/words/findings/bench-refusal.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";

const kit = fixtureKit("harbour-moon");
const loaded = { misfit: benchMisfitText, refusal: refusalText };

describe("why something cannot be done at the bench", () => {
  beforeEach(() => vi.stubGlobal("self", {}));
  afterEach(() => vi.unstubAllGlobals());

  it("is told by a script that is fetched once", async () => {
    const fetched: string[] = [];
    const load = async (address: string) => {
      fetched.push(address);
      self.leaflightWhyNot = loaded;
    };
    const failure = { kind: "picture-flat", height: 3, leastTab: 4 } as const;
    for (let i = 0; i < 2; i += 1)
      expect(await whyNot((words) => words.misfit(failure, kit), load)).toBe(benchMisfitText(failure, kit));
    expect(fetched).toEqual(["../../../assets/scripts/why-not.js"]);
  });

  it("says so where that cannot be fetched, and lets other faults through", async () => {
    const offline = () => Promise.reject(new LoadError("reasons"));
    expect(await whyNot(() => "", offline)).toBe(
      "Why this cannot be done could not be loaded. Try again when you are online.",
    );
    self.leaflightWhyNot = loaded;
    const tell = () => {
      throw new RangeError("a fault");
    };
    await expect(whyNot(tell)).rejects.toThrow(RangeError);
  });
});

import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CORNER_WAY } from "../../../src/core/bench/corner-way.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { cornerMarks } from "../../../src/output/views/corner-card.ts";
import { formatNumber } from "../../../src/words/lengths.ts";
import { valueFrom } from "../../core/findings/made.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";
import type { OpenedSite } from "../../site/shared-site.ts";
import { GULL, type Maker, newMaker } from "./bench-reader.ts";

const FOLDED = `${GULL}?folds=corner`;

/** A kit whose corners are folded, from the first step through a batch, a measurement, a lost leaf and a reload. */
export function cornerSuite(served: () => OpenedSite): void {
  describe("a kit that is folded by corners", () => {
    let maker: Maker;
    beforeAll(async () => {
      maker = await newMaker(served());
      await maker.open(FOLDED);
    });
    afterAll(() => maker.close());

    it("shows every leaf with the marks of its pattern", async () => {
      const kit = refitKit(fixtureKit("little-gull"), { foldStyle: "corner" });
      const { pattern } = valueFrom(CORNER_WAY.plan(kit));
      const style = { units: kit.units, step: kit.fit.markStep };
      const shown = await maker.walk();
      expect(shown.map(({ leaf, marks, folds }) => [leaf, marks.map(beforeArrow), folds])).toEqual(
        pattern.leaves.map((leaf) => [leaf.leaf, cornerMarks(leaf).map((mark) => formatNumber(mark, style)), []]),
      );
    });

    it("goes on after a reload, with what was measured and left out", async () => {
      await maker.goTo("leaf", 60);
      await maker.press("go");
      await maker.press("lose");
      expect(await maker.text("recovery-words")).toMatch(/^A corner that lies at a wrong mark needs none of this/);
      await maker.press("recovery-do");
      await maker.press("menu-measure");
      expect(await maker.text("measure-lead")).toMatch(
        /^Press the first \d+ picture leaves together [\d.]+\smm from the head/,
      );
      await maker.page.type("[data-measure-thickness]", "4.5");
      expect(await maker.text("measure-result")).toMatch(/^Each flap is as bulky as/);
      await maker.page.$eval("[data-measure-form]", (form) => (form as HTMLFormElement).requestSubmit());
      const before = [await maker.leaf(), await maker.done(), await maker.text("big")];
      await maker.open(FOLDED);
      expect([await maker.leaf(), await maker.done(), await maker.text("big")]).toEqual(before);
      expect(new URL(maker.page.url()).search).toMatch(/lost=61&?/);
    });
  });
}

/** A mark's figure without the end of a crease that is steeper than 45°. */
function beforeArrow(mark: string): string {
  return mark.replace(/ →.*$/, "");
}

import { describe, expect, it } from "vitest";
import { makeabilityOf } from "../../../src/core/makeability/makeability.ts";
import { authorIndex, authorPage } from "../../../src/output/parts/author.ts";
import { warningsPart } from "../../../src/output/parts/warnings.ts";
import { galleryKit } from "../../gallery/kits.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { htmlFaults } from "../../site/html-faults.ts";
import { fixtureView } from "../feeds/made-kits.ts";

const link = (target: string): string => `..${target}`;
const whole = (main: unknown): string =>
  `<!doctype html>\n<html lang="en"><head><title>For the author</title></head><body>${main}</body></html>\n`;

/** Values that markup made from a misread field would show. */
const NOTHING = /undefined|\[object|>(null|true|false|NaN)</;

describe("authorPage(view, made, found, link)", () => {
  it.each(FIXTURE_KITS)("%s: is sound markup with a value in each place", async (slug) => {
    const view = fixtureView(slug);
    const page = whole(authorPage(view, makeabilityOf(view), ["A note <b>on</b> the picture."], link));
    expect(page).not.toMatch(NOTHING);
    expect(page).toContain("A note &lt;b&gt;on&lt;/b&gt; the picture.");
    expect(await htmlFaults(page, slug)).toEqual([]);
  });

  it("says of what is too little to be seen that nothing need be changed", () => {
    const view = fixtureView("little-gull");
    expect(String(authorPage(view, makeabilityOf(view), [], link))).toContain("Too little to be seen");
  });

  it("tells of a piece that is read while walking round without what is seen", () => {
    const view = { ...fixtureView("little-gull"), ...galleryKit("small-along") };
    const page = String(authorPage(view, makeabilityOf(view), [], link));
    expect(page).toContain("is seen from everywhere");
    expect(page).not.toMatch(NOTHING);
  });
});

describe("authorIndex(kits, link)", () => {
  it("leads to each kit's page for its author", async () => {
    const kits = FIXTURE_KITS.map((slug, troubles) => ({ kit: fixtureView(slug).kit, troubles }));
    const page = whole(authorIndex(kits, link));
    for (const slug of FIXTURE_KITS) expect(page).toContain(`href="../author/${slug}/index.html"`);
    expect(page).toContain("nothing to look at");
    expect(await htmlFaults(page, "index")).toEqual([]);
  });
});

describe("warningsPart(view)", () => {
  it("keeps what is only for the author from readers", () => {
    const view = { ...fixtureView("little-gull"), warnings: ["It springs open."], notes: ["picture.svg:3: a stroke"] };
    expect(String(warningsPart(view))).toContain("It springs open.");
    expect(String(warningsPart(view))).not.toContain("picture.svg");
    expect(String(warningsPart({ ...view, warnings: [] }))).toBe("");
  });
});

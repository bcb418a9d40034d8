import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { figuresPart } from "../../../src/output/parts/figures.ts";
import { kitPage } from "../../../src/output/parts/kit-page.ts";
import { KIT_PARTS, type KitPart } from "../../../src/output/parts/kit-parts.ts";
import { raw } from "../../../src/output/parts/markup.ts";
import { PACKET_PAGES, packetPart } from "../../../src/output/parts/packet.ts";
import { tacksPart } from "../../../src/output/parts/tacks.ts";
import { viewCorner } from "../../../src/output/views/corner-view.ts";
import type { KitView } from "../../../src/output/views/kit-view.ts";
import { withPacket } from "../../../src/output/views/packet-view.ts";
import { renderPart } from "../../../src/page/kit/render.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { cornerKit, cornerPattern } from "../../oracle/corner/corner-kit.ts";
import { fixtureView } from "../feeds/made-kits.ts";

const PARTS = Object.keys(KIT_PARTS) as KitPart[];
const HOSTILE = `<b onclick="x">&'`;

/** Values that markup made from a misread field would show. */
const NOTHING = /undefined|\[object|>(null|true|false|NaN)</;

/** The same view with something of it changed: a view makes its parts when they are asked for. */
function changed(view: KitView, fields: Partial<KitView>): KitView {
  return Object.create(view, Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, { value }])));
}

describe("kitPage(view, story)", () => {
  const kit = cornerKit();
  const folded = viewCorner({ kit, pattern: cornerPattern(kit), findings: [], pictureNotes: [] }, []);

  it("leads to the bench and the page of a piece, whichever way leaves are made", () => {
    for (const view of [folded, fixtureView("little-gull")])
      for (const page of ["make/index.html", "bench/index.html"])
        expect(String(kitPage(view, raw("")))).toContain(`href="${page}"`);
  });

  it("says where corners are folded, so that nothing leads to tacks", () => {
    expect(String(kitPage(folded, raw("")))).toMatch(/^<main id="main" class="wrap kit by-corners">/);
    expect(String(kitPage(fixtureView("little-gull"), raw("")))).toMatch(/^<main id="main" class="wrap kit">/);
  });

  it.each(FIXTURE_KITS)("%s: holds every part as the page's script fills it again", (slug) => {
    const page = String(kitPage(fixtureView(slug), raw("<p>Story</p>")));
    for (const part of PARTS) {
      const filled = renderPart(part, fixtureView(slug));
      expect(page).toContain(` data-part="${part}">${filled}</`);
    }
    expect(page.match(/data-part="/g)).toHaveLength(PARTS.length);
    expect(page).toContain("<p>Story</p>");
  });

  it.each(FIXTURE_KITS)("%s: shows a value in each place, on page and paper", (slug) => {
    expect(String(kitPage(fixtureView(slug), raw("")))).not.toMatch(NOTHING);
    const printed = withPacket(fixtureView(slug));
    for (const part of Object.values(PACKET_PAGES)) expect(String(part(printed))).not.toMatch(NOTHING);
  });

  it("escapes what authors write", () => {
    const view = fixtureView("harbour-moon", {
      title: HOSTILE,
      summary: HOSTILE,
      links: [{ label: HOSTILE, url: "https://example.org/?a=1&b=2", host: "example.org" }],
      credit: { work: HOSTILE, source: HOSTILE, licence: HOSTILE, url: undefined },
      versions: [{ version: HOSTILE, date: "2026-10-03", note: HOSTILE }],
    });
    const page = String(kitPage(view, raw(""))) + String(packetPart(withPacket(view)));
    expect(page).not.toContain("<b onclick");
    expect(page).toContain("&lt;b onclick=&quot;x&quot;&gt;&amp;&#39;");
    expect(page).toContain('href="https://example.org/?a=1&amp;b=2"');
  });
});

describe("packetPart(view, seat)", () => {
  it("names the seat that it is for", () => {
    const view = withPacket(fixtureView("little-gull"));
    expect(String(packetPart(view, { number: 7, supplies: raw("") }))).toContain(
      '<p class="over">Leaflight packet · seat 7</p>',
    );
    expect(String(packetPart(view))).toContain('<p class="over">Leaflight packet</p>');
  });
});

describe("a part", () => {
  const view = fixtureView("little-gull");

  it("cannot be given a view with a misspelt field", () => {
    const { difficulty, pattern, figures } = view;
    expect(String(figuresPart({ difficulty, pattern, figures }))).toContain("tagline");
    // @ts-expect-error: figures, not figurs
    expect(() => figuresPart({ difficulty, pattern, figurs: figures })).toThrow();
  });

  it("cannot read a misspelt field of its view", () => {
    // @ts-expect-error: a view has no such field
    expect(view.tackz).toBeUndefined();
    // @ts-expect-error: nor has a row of one
    expect(view.rows[0]!.leef).toBeUndefined();
  });

  it.each([
    [0, 0, /^<p>The next leaf holds every flap of this kit: there is nothing to glue\.<\/p>$/],
    [0, 1, /1 more loose stretch is too short to need it; the JSON lists it, too\./],
    [1, 2, /<li>leaf 5, p\. 9: 1 mm<\/li>.*\n?.*2 more loose/],
  ])("tacksPart: %i tacks and %i held stretches", (tacks, held, wanted) => {
    const rows = Array.from({ length: tacks }, () => ({
      number: leafNumber(5),
      leaf: "leaf 5, p. 9",
      place: "1 mm",
    }));
    expect(String(tacksPart(changed(view, { tacks: { rows, held } })))).toMatch(wanted);
  });
});

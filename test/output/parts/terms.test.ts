import { describe, expect, it } from "vitest";
import { html, raw } from "../../../src/output/parts/markup.ts";
import { withTerms } from "../../../src/output/parts/terms.ts";
import { glossary } from "../../../src/words/glossary.ts";

const links = (text: string): string[] =>
  [...text.matchAll(/<a class="term" href="g#([^"]+)"[^>]*>([^<]+)<\/a>/g)].map((one) => `${one[1]}:${one[2]}`);
const linked = (markup: string): string => withTerms(raw(markup), "g").toString();

describe("withTerms(section, page)", () => {
  it("links a term where a section first uses it, and only there", () => {
    expect(links(linked("<p>Fold a leaf. The next leaf and all leaves.</p><p>A leaf.</p>"))).toEqual(["leaf:leaf"]);
  });

  it("takes the longest term that stands there", () => {
    expect(links(linked("<p>Press the score line on a picture leaf, then on border leaves.</p>"))).toEqual([
      "score-line:score line",
      "picture-leaf:picture leaf",
      "border-leaf:border leaves",
    ]);
  });

  it("leaves words alone that only hold a term", () => {
    expect(links(linked("<p>A header, a leafy tailor, level-headed, pages of cutlery.</p>"))).toEqual([]);
  });

  it("leaves headings, links, controls, tables and drawings alone, and goes on behind them", () => {
    const markup =
      '<h2>The gutter</h2><a href="x">gutter</a><button>gutter</button><table><tr><td>gutter</td></tr></table><svg><title>gutter</title><text>gutter</text></svg><p title="gutter">At the <b>gutter</b>.</p>';
    const made = linked(markup);
    expect(links(made)).toEqual(["gutter:gutter"]);
    expect(made.replace(/<a class="term"[^>]*>([^<]+)<\/a>/g, "$1")).toBe(markup);
  });

  it("changes nothing of markup without a term", () => {
    const markup = html`<p>${"1 < 2 & “3”"}</p>`;
    expect(withTerms(markup, "g").toString()).toBe(markup.toString());
  });
});

describe("glossary()", () => {
  it("has one meaning for each term and one term for each form", () => {
    const terms = glossary();
    const forms = terms.flatMap((term) => term.forms);
    expect(new Set(forms).size).toBe(forms.length);
    expect(new Set(terms.map((term) => term.id)).size).toBe(terms.length);
    for (const { id, meaning } of terms) {
      expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(meaning).toMatch(/^[A-Z].*\.$/);
    }
  });
});

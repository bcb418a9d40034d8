import { describe, expect, it } from "vitest";
import { type Known, putNotes } from "../../../src/build/serving/put-notes.ts";
import type { DeskEntry, DeskMessage, DeskState } from "../../../src/input/desk/protocol.ts";
import { emptyDesk } from "../desk/empty-desk.ts";

const PAGE = '<!doctype html><html><head><title>Moon</title></head>\n<body class="kit"><main>Moon</main></body></html>';

const message = (file: string): DeskMessage => ({
  file,
  line: 4,
  column: 2,
  field: "book.leaves",
  given: "<b>many</b>",
  allowed: "a number",
  remedy: "correct this value",
  sentence: "",
});

const entry = (slug: string, more: Partial<DeskEntry> = {}): DeskEntry => ({
  slug,
  title: `The ${slug}`,
  file: `content/kits/${slug}/index.md`,
  draft: false,
  state: "fine",
  messages: [],
  warnings: [],
  page: `/kits/${slug}/`,
  authorPage: undefined,
  cover: undefined,
  papers: [],
  ...more,
});

const broken = (slug: string): DeskEntry =>
  entry(slug, { state: "broken", messages: [message(`content/kits/${slug}/index.md`)] });

const noted = (path: string, state: Partial<DeskState>, more: Partial<Known> = {}): string =>
  putNotes(PAGE, path, {
    state: { ...emptyDesk("Harbour"), ...state },
    desk: "http://127.0.0.1:8081",
    isThere: true,
    ...more,
  });

describe("putNotes(page, path, known)", () => {
  it("leaves a page as it is where all is well", () => {
    expect(noted("/", { kits: [entry("moon")] })).toBe(PAGE);
    expect(noted("/guide/", { kits: [broken("moon")] })).toBe(PAGE);
    expect(noted("/kits/sun/", { kits: [broken("moon")] })).toBe(PAGE);
  });

  it("says above the pages of a broken kit what is wrong, and that they are its last good state", () => {
    for (const path of ["/kits/moon/", "/kits/moon/make/", "/author/moon/"]) {
      const page = noted(path, { kits: [broken("moon")] });
      expect(page).toContain('<body class="kit"><aside class="served-band"');
      expect(page).toContain("content/kits/moon/index.md:4:2");
      expect(page).toContain("&lt;b&gt;many&lt;/b&gt;");
      expect(page).toContain("the last state that could be made");
      expect(page).toContain('href="http://127.0.0.1:8081/kits/moon"');
      expect(page).not.toContain("data-print");
    }
  });

  it("does not speak of a last state where there is none", () => {
    const page = noted("/kits/moon/", { kits: [broken("moon")] }, { isThere: false });
    expect(page).toContain("served-band");
    expect(page).not.toContain("the last state that could be made");
    expect(page).not.toContain("served-strip");
  });

  it("says on every page what is wrong with what all share", () => {
    const messages = [message("content/site.yaml")];
    for (const path of ["/", "/guide/", "/kits/moon/"]) {
      const page = noted(path, { kits: [entry("moon")], messages });
      expect(page).toContain("content/site.yaml:4:2");
      expect(page).not.toContain("the last state that could be made");
    }
  });

  it("puts a strip below pages of kits and classes, which prints them", () => {
    const kit = noted("/kits/moon/", { kits: [entry("moon")] });
    expect(kit).toMatch(/<aside class="served-strip".*data-print="kit moon".*<\/aside><\/body>/s);
    const classes = [entry("evening", { page: "/classes/evening/" })];
    for (const path of ["/classes/evening/", "/private/classes/evening/"])
      expect(noted(path, { classes })).toContain('data-print="class evening"');
  });

  it("lists above the catalogue what is not worked out yet", () => {
    for (const path of ["/", "/index.html"]) {
      const page = noted(path, { kits: [entry("moon"), entry("sun", { state: "waiting" })] });
      expect(page).toContain("1 of 2 kits");
      expect(page).toContain('<a href="/kits/sun/">The sun</a>');
      expect(page).not.toContain('href="/kits/moon/"');
    }
  });
});

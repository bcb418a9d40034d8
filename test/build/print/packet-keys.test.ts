import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { PacketKeys } from "../../../src/build/print/packet-keys.ts";
import { PAPERS } from "../../../src/output/views/paper.ts";
import { type MadeSite, madeSite } from "./made-site.ts";

const HEAD =
  '<head><link rel="stylesheet" href="print.css"><meta property="og:url" content="https://one.example/"></head>';

describe("PacketKeys", () => {
  let site: MadeSite;
  beforeAll(() => {
    site = madeSite();
    site.write("assets/fonts/one.woff2", "letters");
    site.write("print.css", "p { color: black }");
    site.write("page.html", `<html>${HEAD}<body><main><p>words</p></main></body></html>`);
  });
  afterAll(() => site.remove());
  const keys = (address?: string, browser = "browser 1"): PacketKeys => new PacketKeys(site.output, browser, address);
  const job = () => site.job("page.html");

  it("names the same the same, asked together or alone", () => {
    const together = keys();
    const [a4, letter] = PAPERS.map((paper) => together.of({ ...job(), paper }));
    expect(a4).not.toBe(letter);
    expect(PAPERS.map((paper) => keys().of({ ...job(), paper }))).toEqual([a4, letter]);
  });

  it.each([
    ["paper", () => keys().of({ ...job(), paper: PAPERS[1]! })],
    ["title", () => keys().of({ ...job(), title: "another" })],
    ["footer", () => keys().of({ ...job(), footer: "another" })],
    ["edition", () => keys().of({ ...job(), edition: "bench" })],
    ["browser", () => keys(undefined, "browser 2").of(job())],
  ])("names another %s otherwise", (_, other) => {
    expect(other()).not.toBe(keys().of(job()));
  });

  it.each([
    ["the page", "page.html", (text: string) => text.replace("words", "other words")],
    ["its style", "print.css", () => "p { color: grey }"],
    ["a font", "assets/fonts/one.woff2", () => "other letters"],
  ])("names it otherwise when %s changes", (_, path, change) => {
    const before = keys().of(job());
    const old = site.read(path);
    site.write(path, change(old));
    expect(keys().of(job())).not.toBe(before);
    site.write(path, old);
    expect(keys().of(job())).toBe(before);
  });

  it("names it the same at another address, unless a link leads there", () => {
    const [one, other] = ["https://one.example/", "https://other.example/"] as const;
    expect(keys(one).of(job())).toBe(keys(other).of(job()));
    site.write("linked.html", `<html>${HEAD}<body><main><a href="x.html">x</a></main></body></html>`);
    expect(keys(one).of(site.job("linked.html"))).not.toBe(keys(other).of(site.job("linked.html")));
    const before = keys(one).of(job());
    site.write("page.html", site.read("page.html").replace("https://one.example/", "https://other.example/"));
    expect(keys(one).of(job())).toBe(before);
  });
});

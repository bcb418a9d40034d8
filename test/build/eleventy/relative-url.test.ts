import { describe, expect, it } from "vitest";
import { linkFrom, relativeUrl } from "../../../src/build/eleventy/relative-url.ts";

describe("relativeUrl(target, pageUrl)", () => {
  it.each([
    ["/", "/", "index.html"],
    ["/", "/kits/moon/", "../../index.html"],
    ["/kits/moon/", "/", "kits/moon/index.html"],
    ["/kits/moon/", "/kits/moon/", "index.html"],
    ["/kits/moon/", "/kits/boat/", "../moon/index.html"],
    ["/kits/moon/front.svg", "/", "kits/moon/front.svg"],
    ["/kits/moon/front.svg", "/kits/moon/packet/", "../front.svg"],
    ["/bundle/a.css", "/kits/moon/packet/large.html", "../../../bundle/a.css"],
    ["/bundle/a.css", "/index.html", "bundle/a.css"],
  ])("%s seen from %s is %s", (target, page, relative) => {
    expect(relativeUrl(target, page)).toBe(relative);
  });

  // RFC 3986, section 5.2, as the platform's own URL follows it.
  it("leads to the target, under whatever folder and from the disk", () => {
    const pages = ["/", "/kits/moon/", "/kits/moon/packet/", "/kits/moon/packet/large.html"];
    const targets = ["/", "/kits/moon/", "/kits/boat/", "/assets/fonts/a.woff2", "/kits/moon/pattern.json"];
    for (const root of ["https://example.org", "https://example.org/craft/books", "file:///home/maker/dist"]) {
      for (const page of pages) {
        for (const target of targets) {
          const found = new URL(relativeUrl(target, page), `${root}${page}`);
          expect(found.href.replace(/index\.html$/, "")).toBe(`${root}${target}`);
        }
      }
    }
  });
});

describe("linkFrom(pageUrl, target, root)", () => {
  it("is relative, but on the page for missing addresses, which links from the host's root", () => {
    expect(linkFrom("/kits/moon/", "/assets/a.css", "/craft/books/")).toBe("../../assets/a.css");
    expect(linkFrom("/404.html", "/assets/a.css", "/craft/books/")).toBe("/craft/books/assets/a.css");
    expect(linkFrom("/404.html", "/", "/")).toBe("/");
  });
});

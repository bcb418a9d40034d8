import { describe, expect, it } from "vitest";
import { targetOf } from "../../../src/core/story/targets.ts";
import { fc } from "../../seed.ts";

const PAGE = "/kits/harbour-moon/";

describe("targetOf(link, page)", () => {
  it.each(["https://example.org/a?b#c", "http://example.org", "mailto:desk@example.org", "tel:+15550100", "#steps"])(
    "%s leads away or stays on the page",
    (link) => {
      expect(targetOf(link, PAGE)).toEqual({ kind: "away" });
    },
  );

  it.each([
    "javascript:alert(1)",
    "JAVASCRIPT:alert(1)",
    "data:text/html,x",
    "file:///etc/hosts",
    "vbscript:x",
    "//example.org/x",
    "\\\\example.org\\x",
    "../../../out",
    "https:",
    "mailto:",
  ])("%s is no link of a text", (link) => {
    expect(targetOf(link, PAGE)).toEqual({ kind: "unknown" });
  });

  // Outside check: the WHATWG URL parser of Node, with a host that no link names.
  it("leads where a browser would go from the page", () => {
    const step = fc.constantFrom("..", ".", "a", "b-c", "index.html", "x.pdf");
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 5 }), fc.boolean(), fc.boolean(), (steps, root, folder) => {
        const link = `${root ? "/" : ""}${steps.join("/")}${folder ? "/" : ""}?q=1#part`;
        const target = targetOf(link, PAGE);
        if (target.kind !== "site") return;
        const url = new URL(link, `https://host.example${PAGE}`);
        expect(target.address).toBe(url.pathname.replace(/(^|\/)index\.html$/, "$1"));
        expect(target.rest).toBe("?q=1#part");
      }),
    );
  });
});

import { DOMParser } from "@xmldom/xmldom";
import { describe, expect, it } from "vitest";
import { element, escapeXml } from "../../src/output/xml.ts";

describe("element(name, text, attributes)", () => {
  it.each(["a < b && c > d", `"quotes" and 'others'`, "]]> <!-- &amp; -->", "Zwölf Bücher – 📚", "two\nlines"])(
    "holds %j as text and as an attribute, for another parser",
    (text) => {
      const { documentElement } = new DOMParser().parseFromString(element("one", text, { note: text }), "text/xml");
      expect(documentElement!.textContent).toBe(text);
      // XML 1.0, 3.3.3: a line end in an attribute becomes a space.
      expect(documentElement!.getAttribute("note")).toBe(text.replace("\n", " "));
    },
  );

  it("leaves out an attribute that is not stated", () => {
    expect(element("link", "", { rel: "self", type: undefined })).toBe('<link rel="self"/>');
  });
});

describe("escapeXml(text)", () => {
  // XML 1.0, production 2: #x9 | #xA | #xD | [#x20-#xD7FF] | [#xE000-#xFFFD] | [#x10000-#x10FFFF].
  it("drops what no XML document may hold", () => {
    expect(escapeXml("a\u0000b\u0007c\u001fd\ufffee\ud800f\tg\u0080")).toBe("abcdef\tg\u0080");
  });
});

import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { packed, unpacked } from "../../../src/page/offline/packed.ts";

const TEXT = "leaf after leaf ".repeat(500);
const bytesOf = (text: string): ArrayBuffer => new TextEncoder().encode(text).buffer as ArrayBuffer;

describe("packed(bytes, type), unpacked(kept)", () => {
  it.each(["text/html; charset=utf-8", "text/javascript", "image/svg+xml", "application/json"])(
    "keeps %s packed, as any other program unpacks it, and gives it as it was",
    async (type) => {
      const kept = packed(bytesOf(TEXT), type);
      const stored = Buffer.from(await kept.clone().arrayBuffer());
      expect(stored.length).toBeLessThan(TEXT.length / 5);
      expect(gunzipSync(stored).toString()).toBe(TEXT);
      const given = unpacked(kept);
      expect(await given.text()).toBe(TEXT);
      expect(given.headers.get("content-type")).toBe(type);
    },
  );

  it.each(["image/webp", "font/woff2", "application/pdf"])("keeps %s as it is", async (type) => {
    const kept = packed(bytesOf(TEXT), type);
    expect(await kept.clone().text()).toBe(TEXT);
    expect(await unpacked(kept).text()).toBe(TEXT);
  });

  it("gives what an earlier version kept unpacked", async () => {
    const kept = new Response(TEXT, { headers: { "content-type": "text/html" } });
    expect(await unpacked(kept).text()).toBe(TEXT);
  });
});

import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { decodeText } from "../../../src/input/files/decode.ts";
import { strayCharacter } from "../../../src/input/files/stray-character.ts";

/** Bytes by hand, from the tables of the encodings themselves. */
const bytes = (hex: string): Buffer => Buffer.from(hex.replaceAll(" ", ""), "hex");
const seems = (data: Buffer): unknown => {
  const decoded = decodeText(data);
  return "fault" in decoded ? (decoded.fault.kind === "encoding" ? decoded.fault.seems : decoded.fault) : decoded.text;
};

describe("decodeText(bytes)", () => {
  it.each<[string, string, unknown]>([
    ["a letter of three bytes", "e6 9c 88", "月"],
    ["a letter of four bytes", "f0 9f 8c 99", "🌙"],
    ["a mark of UTF-16", "ff fe 61 00", "UTF-16LE"],
    ["the other mark of UTF-16", "fe ff 00 61", "UTF-16BE"],
    ["a mark of UTF-32", "ff fe 00 00 61 00 00 00", "UTF-32"],
    ["the other mark of UTF-32", "00 00 fe ff 00 00 00 61", "UTF-32"],
    ["UTF-16 without a mark", "74 00 69 00 74 00 6c 00", "UTF-16LE"],
    ["the other UTF-16 without a mark", "00 74 00 69 00 74 00 6c", "UTF-16BE"],
    ["UTF-16 without a mark that is no UTF-8", "74 00 e9 00 74 00 6c 00 65 00", "UTF-16LE"],
    ["é of ISO-8859-1", "63 61 66 e9 20", "ISO-8859-1"],
    ["quotes of Windows-1252", "93 63 61 66 e9 94", "Windows-1252"],
    ["a letter written longer than it is", "c0 af", "ISO-8859-1"],
    ["half of a pair in UTF-8", "ed a0 80 20", "damaged"],
    ["bytes of no text", "81 00 01 02 03 04 05 06 07 08", "binary"],
    ["a photo", "ff d8 ff e0", { kind: "other-content", is: "jpeg" }],
  ])("knows %s", (_, hex, wanted) => {
    expect(seems(bytes(hex))).toEqual(wanted);
  });

  it("knows what is packed", () => {
    expect(seems(gzipSync("title: moon"))).toEqual({ kind: "other-content", is: "gzip" });
  });
});

describe("strayCharacter(text)", () => {
  it.each([
    ["a\u0007", 1, 7],
    ["\u007f", 0, 0x7f],
    ["ab\u0085", 2, 0x85],
    ["\ud800", 0, 0xd800],
    ["\uffff", 0, 0xffff],
  ])("finds %j", (text, at, code) => {
    expect(strayCharacter(text)).toEqual({ at, code });
  });

  it("takes all that is written: tabs, line ends, pairs, marks of direction and soft hyphens", () => {
    expect(strayCharacter("\t\r\n🌙\u200f\u00ad")).toBeUndefined();
  });
});

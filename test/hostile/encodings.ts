import { gzipSync } from "node:zlib";
import { CLASS, type Files, type HostileCase, KIT, MOTIF, PAGE, picture, SOUND, SOUND_CLASS, TABLE } from "./sound.ts";

/** Texts in other encodings than UTF-8, and bytes that are no text. */

const GUIDE = "content/guide/en/first.md";
const CAUTIONS = "content/words/en/cautions.yaml";
const CAUTION = '- { id: knife, title: Blades, when: cuts, short: "Cut slowly.", text: "Cut slowly." }\n';

/** A sound text of each kind of file, with a letter that is not ASCII. */
const TEXTS: Readonly<Record<string, { readonly text: string; readonly named: Files }>> = {
  "content/site.yaml": { text: "title: Löwe\nlanguage: en\n", named: {} },
  "content/motifs/block.svg": { text: MOTIF.replace("<path", "<desc>Löwe</desc><path"), named: {} },
  [GUIDE]: { text: String(SOUND[GUIDE]).replace("A page.", "Löwe."), named: {} },
  [CAUTIONS]: { text: CAUTION.replace("Blades", "Löwe"), named: {} },
  "content/words/en/own.ftl": { text: "# Löwe\n", named: {} },
  [`${KIT}/index.md`]: { text: PAGE.replace("First moon", "Löwe"), named: {} },
  [`${KIT}/moon.svg`]: { text: picture("<desc>Löwe</desc>"), named: {} },
  [`${CLASS}/index.md`]: { text: String(SOUND_CLASS[`${CLASS}/index.md`]).replace("One", "Löwe"), named: SOUND_CLASS },
  [`${CLASS}/books.csv`]: { text: TABLE.replace("\n1,", "\n1 ,").replace("130,", "130 ,"), named: SOUND_CLASS },
};

const ENCODED: Readonly<Record<string, { readonly encode: (text: string) => Uint8Array; readonly says: RegExp }>> = {
  "UTF-16 little-endian with a mark": { encode: (text) => utf16le(`\uFEFF${text}`), says: /UTF-16LE/ },
  "UTF-16 big-endian with a mark": { encode: (text) => utf16le(`\uFEFF${text}`).swap16(), says: /UTF-16BE/ },
  "UTF-16 little-endian": { encode: utf16le, says: /UTF-16LE/ },
  "UTF-16 big-endian": { encode: (text) => utf16le(text).swap16(), says: /UTF-16BE/ },
  "UTF-32 with a mark": { encode: utf32, says: /UTF-32/ },
  "ISO-8859-1": { encode: (text) => Buffer.from(`${text}\n# ö`, "latin1"), says: /ISO-8859-1/ },
  "Windows-1252": { encode: (text) => Buffer.from(`${text}\n# \x93ö\x94`, "latin1"), says: /Windows-1252/ },
  gzip: { encode: (text) => gzipSync(text), says: /gzip/ },
  "UTF-8 cut inside a letter": {
    encode: (text) => Buffer.concat([Buffer.from(`${text}# äöü`), Buffer.from([0xc3])]),
    says: /UTF-8 with a wrong byte|damaged/,
  },
  "bytes of a photo": { encode: () => Buffer.from("89504e470d0a1a0a0000000d49484452", "hex"), says: /PNG|png/ },
  "bytes of a document": { encode: () => Buffer.from("%PDF-1.7\n%\xe2\xe3\xcf\xd3\n", "latin1"), says: /PDF|pdf/ },
  "random bytes": { encode: noise, says: /binary/ },
  "a NUL": { encode: (text) => Buffer.from(`${text}# \0\n`), says: /U\+0000/ },
  "an escape": { encode: (text) => Buffer.from(`${text}# \x1b[2J\n`), says: /U\+001B/ },
};

/** Spreadsheets write tables in UTF-16 with a mark, and half of ours are ASCII. */
const SOUND_AS_TABLE: readonly string[] = ["UTF-16 little-endian with a mark", "UTF-16 big-endian with a mark"];

export const ENCODINGS: readonly HostileCase[] = Object.entries(TEXTS).flatMap(([file, { text, named }]) => [
  ...Object.entries(ENCODED).map(([name, { encode, says }]): HostileCase => {
    const files = { ...named, [file]: encode(text) };
    const built = file.endsWith(".csv") && SOUND_AS_TABLE.includes(name);
    return { name: `${name} in ${file}`, files, ...(built ? { expect: "built" } : { expect: "told", says }) };
  }),
  ...(file === CAUTIONS
    ? []
    : [
        {
          name: `a byte order mark in ${file}`,
          files: { ...named, [file]: `\uFEFF${text}` },
          expect: "built",
        } as const,
      ]),
  {
    name: `Windows line ends in ${file}`,
    files: { ...named, [file]: lineEnds(file, text) },
    expect: file === CAUTIONS ? "told" : "built",
  },
]);

function lineEnds(_file: string, text: string): string {
  return text.replaceAll("\n", "\r\n");
}

function utf16le(text: string): Buffer {
  return Buffer.from(text, "utf16le");
}

function utf32(text: string): Uint8Array {
  return Buffer.from(Uint32Array.from([0xfeff, ...[...text].map((letter) => letter.codePointAt(0)!)]).buffer);
}

function noise(): Uint8Array {
  let seed = 1;
  return Uint8Array.from({ length: 500 }, (_, i) => {
    seed = (seed * 48_271) % 2_147_483_647;
    // The first byte is none that a known kind of file begins with.
    return i === 0 ? 0x81 : seed % 256;
  });
}

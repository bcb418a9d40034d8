import { isUtf8 } from "node:buffer";
import { contentKind } from "./content-kind.ts";
import { type Encoding, markedEncoding, seemingEncoding, unmarkedUtf16 } from "./encoding.ts";
import type { ContentFault } from "./file-error.ts";
import { strayCharacter } from "./stray-character.ts";

/** A text, or why bytes are none. */
export type Decoded = { readonly text: string } | { readonly fault: ContentFault };

/**
 * The text of a file, strictly UTF-8, without its byte order mark. `utf16` takes UTF-16 with a byte order mark, too, as
 * spreadsheets save it.
 */
export function decodeText(bytes: Buffer, { utf16 = false }: { readonly utf16?: boolean } = {}): Decoded {
  const kind = contentKind(bytes);
  if (kind !== undefined && kind !== "svg") return { fault: { kind: "other-content", is: kind } };
  const marked = markedEncoding(bytes);
  if (marked !== undefined) return utf16 ? decodeUtf16(bytes, marked) : notUtf8(marked);
  if (!isUtf8(bytes)) return notUtf8(seemingEncoding(bytes), firstWrong(bytes));
  return checked(bytes, new TextDecoder().decode(bytes));
}

function decodeUtf16(bytes: Buffer, encoding: Encoding): Decoded {
  if (encoding === "UTF-32" || bytes.length % 2 === 1) return notUtf8(encoding);
  const text = new TextDecoder(encoding === "UTF-16LE" ? "utf-16le" : "utf-16be").decode(bytes);
  return checked(bytes, text);
}

function notUtf8(seems: Encoding, wrong?: { line: number; column: number; byte: number }): Decoded {
  return { fault: { kind: "encoding", seems, wrong } };
}

/** Bytes of UTF-16 without a mark may pass as UTF-8 full of NUL. */
function checked(bytes: Buffer, text: string): Decoded {
  const stray = strayCharacter(text);
  if (stray === undefined) return { text };
  const seems = stray.code === 0 ? unmarkedUtf16(bytes) : undefined;
  if (seems !== undefined) return notUtf8(seems);
  return { fault: { kind: "control", code: stray.code, ...placeIn(text, stray.at) } };
}

/** Decoded leniently and encoded again, a file first differs from itself at its first wrong byte. */
function firstWrong(bytes: Buffer): { line: number; column: number; byte: number } {
  const again = Buffer.from(bytes.toString("utf8"), "utf8");
  let at = 0;
  while (at < bytes.length && bytes[at] === again[at]) at += 1;
  const before = bytes.subarray(0, at).toString("utf8");
  return { ...placeIn(before, before.length), byte: bytes[at]! };
}

function placeIn(text: string, at: number): { readonly line: number; readonly column: number } {
  const lines = text.slice(0, at).split(/\r\n|\n|\r/);
  return { line: lines.length, column: [...lines.at(-1)!].length + 1 };
}

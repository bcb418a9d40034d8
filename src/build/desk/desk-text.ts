import { createHash } from "node:crypto";
import type { DeskText } from "../../input/desk/protocol.ts";
import { decodeText } from "../../input/files/decode.ts";
import { markedEncoding } from "../../input/files/encoding.ts";
import { FileError } from "../../input/files/file-error.ts";
import { toldOfFile } from "../../input/files/file-message.ts";
import { readWhole } from "../../input/files/read-file.ts";
import { realPath } from "../../input/files/real-path.ts";
import type { DeskFile } from "./desk-file.ts";

/** How a text lies on the disk, beside its letters. */
interface TextForm {
  readonly encoding: "utf-8" | "UTF-16LE" | "UTF-16BE";
  /** Whether it begins with a byte order mark. */
  readonly isMarked: boolean;
  /** Whether all its lines end as Windows ends them. */
  readonly isWindows: boolean;
}

/** A text as it was read, with how it is written again. */
export interface ReadText extends DeskText {
  readonly form: TextForm;
}

/** The name of bytes. */
export function markOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/**
 * The text of a file of the desk, without its byte order mark.
 * @throws KitError where it holds none, or its folder leads out of content
 */
export function readDeskText(source: DeskFile): ReadText {
  return toldOfFile(() => {
    realPath({ base: source.base, file: source.home!, kind: undefined });
    return textOf(source, readWhole(source));
  });
}

/** @throws FileError */
function textOf(source: DeskFile, bytes: Buffer): ReadText {
  const decoded = decodeText(bytes, { utf16: source.kind === "table" });
  if ("fault" in decoded) throw new FileError(source, decoded.fault);
  const { text } = decoded;
  const encoding = markedEncoding(bytes);
  const isWide = encoding === "UTF-16LE" || encoding === "UTF-16BE";
  const form: TextForm = {
    encoding: isWide ? encoding : "utf-8",
    isMarked: isWide || bytes.subarray(0, MARK.length).equals(MARK),
    isWindows: text.includes("\r\n") && !/(^|[^\r])\n/.test(text),
  };
  return { file: source.file, text, mark: markOf(bytes), form };
}

const MARK = Buffer.from("\ufeff", "utf8");

/** A text as bytes in the form of the one that it follows; lines that all end without Windows' sign get it where all had it. */
export function bytesOf(text: string, { encoding, isMarked, isWindows }: TextForm): Buffer {
  const lines = isWindows && !text.includes("\r") ? text.replaceAll("\n", "\r\n") : text;
  const whole = isMarked ? `\ufeff${lines}` : lines;
  if (encoding === "utf-8") return Buffer.from(whole, "utf8");
  const wide = Buffer.from(whole, "utf16le");
  return encoding === "UTF-16LE" ? wide : wide.swap16();
}

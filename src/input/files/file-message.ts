import * as say from "../../words/messages.ts";
import { FileError, type FileFault } from "./file-error.ts";
import { hex } from "./hex.ts";
import { KitError, type KitMessage } from "./message.ts";
import { PHOTO_ENDINGS } from "./photo-kinds.ts";
import type { Advice } from "./problem.ts";
import { FILE_LIMITS, type FileKind, MB } from "./site-file.ts";

/** Reads with `read`; what is wrong with a file becomes a message about it. @throws KitError */
export function toldOfFile<T>(read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    throw new KitError([fileMessage(error)]);
  }
}

/** A file's fault as a message, with the place in it where there is one. */
export function fileMessage(error: FileError): KitMessage {
  const { file, kind = "folder" } = error.source;
  return { file, ...placeOf(error.fault), field: say.fileField({ kind }), ...fileAdvice(error) };
}

/** What is wrong with a file in words, for a message at the place that names it. */
export function fileAdvice({ fault, source: { kind } }: FileError): Advice {
  return { given: givenOf(fault), allowed: allowedOf(fault, kind), remedy: remedyOf(fault, kind) };
}

/** The whole of a file is meant where no line of it is. */
function placeOf(fault: FileFault): Pick<KitMessage, "line" | "column"> {
  const at = fault.kind === "control" ? fault : fault.kind === "encoding" ? fault.wrong : undefined;
  return { line: at?.line, column: at?.column };
}

function givenOf(fault: FileFault): string {
  switch (fault.kind) {
    case "missing":
      return say.fileMissing();
    case "link-nowhere":
      return say.fileLinkNowhere();
    case "link-outside":
      return say.fileLinkOutside({ home: fault.home });
    case "not-a-file":
      return say.fileNotAFile({ is: fault.is });
    case "not-a-folder":
      return say.fileNotAFolder();
    case "forbidden":
      return say.fileForbidden();
    case "unreadable":
      return say.fileUnreadable({ code: fault.code });
    case "too-large":
      return say.fileTooLarge({ size: Math.ceil((10 * fault.size) / MB) / 10 });
    case "empty":
      return say.fileEmpty();
    case "other-content":
      return say.fileOtherContent({ is: fault.is });
    case "encoding": {
      const what = say.fileEncoding({ seems: fault.seems });
      return fault.wrong ? say.fileEncodingByte({ what, byte: hex("0x", fault.wrong.byte, 2) }) : what;
    }
    case "control":
      return say.fileControl({ code: hex("U+", fault.code, 4) });
  }
}

function allowedOf(fault: FileFault, kind: FileKind | undefined): string {
  if (kind === undefined) return say.fileAllowedFolder();
  if (fault.kind === "link-outside") return say.fileAllowedInside({ home: fault.home });
  if (fault.kind === "control") return say.fileAllowedCharacters();
  return say.fileAllowed({ kind, most: FILE_LIMITS[kind], kinds: PHOTO_ENDINGS.join(", ") });
}

function remedyOf(fault: FileFault, kind: FileKind | undefined): string {
  switch (fault.kind) {
    case "missing":
      return say.fileDoAdd();
    case "link-nowhere":
    case "link-outside":
      return say.fileDoLink();
    case "not-a-file":
      return say.fileDoReplace();
    case "not-a-folder":
      return say.fileDoFolder();
    case "forbidden":
      return say.fileDoPermission();
    case "unreadable":
      return say.fileDoSystem();
    case "too-large":
      return say.fileDoSmaller({ kind: kind ?? "text" });
    case "empty":
      return say.fileDoWrite({ kind: kind ?? "text" });
    case "other-content":
      return fault.is === "gzip" || fault.is === "zip"
        ? say.fileDoUnpack()
        : say.fileDoExport({ kind: kind ?? "text" });
    case "encoding":
      return fault.seems === "binary" ? say.fileDoExport({ kind: kind ?? "text" }) : say.fileDoUtf8();
    case "control":
      return say.fileDoCharacter();
  }
}

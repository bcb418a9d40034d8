import { FileError, type FileFault } from "../files/file-error.ts";
import { hex } from "../files/hex.ts";
import { FILE_LIMITS } from "../files/site-file.ts";
import { WordsError } from "./words-error.ts";

const ALLOWED = `a text file in UTF-8 of at most ${FILE_LIMITS.words} MB in its language’s folder`;

/** Reads with `read`; what is wrong with a file of words is told in English of its own. @throws WordsError */
export function toldOfWords<T>(read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof FileError)) throw error;
    const { fault, source } = error;
    const at = fault.kind === "control" ? fault : fault.kind === "encoding" ? fault.wrong : undefined;
    const place = { file: source.file, line: at?.line, column: at?.column };
    throw new WordsError([
      {
        ...place,
        field: "words",
        given: given(fault),
        allowed: ALLOWED,
        remedy: "correct the file, or put its first version back",
      },
    ]);
  }
}

function given(fault: FileFault): string {
  switch (fault.kind) {
    case "not-a-file":
      return `a ${fault.is}`;
    case "unreadable":
      return `a file that the system cannot read (${fault.code})`;
    case "other-content":
      return `a file of another kind (${fault.is})`;
    case "encoding":
      return `text that is not UTF-8 (${fault.seems})`;
    case "control":
      return `the control character ${hex("U+", fault.code, 4)}`;
    default:
      return SHORT[fault.kind];
  }
}

const SHORT = {
  missing: "a file that is not there",
  "link-nowhere": "a link that leads nowhere",
  "link-outside": "a link that leads out of the content folder",
  "not-a-folder": "no folder",
  forbidden: "a file that this account may not read",
  "too-large": "a file that is too large",
  empty: "an empty file",
} as const;

import type { ContentKind } from "./content-kind.ts";
import type { Encoding } from "./encoding.ts";
import type { FileKind, SiteFile } from "./site-file.ts";

/** What keeps a file from being read: where it should be, or what is in it. Sizes in bytes, lines and columns from 1. */
export type FileFault =
  | { readonly kind: "missing" }
  | { readonly kind: "link-nowhere" }
  | { readonly kind: "link-outside"; readonly home: string }
  | { readonly kind: "not-a-file"; readonly is: "folder" | "pipe" | "socket" | "device" }
  | { readonly kind: "not-a-folder" }
  | { readonly kind: "forbidden" }
  | { readonly kind: "unreadable"; readonly code: string }
  | ContentFault;

/** What is wrong inside a file. */
export type ContentFault =
  | { readonly kind: "too-large"; readonly size: number; readonly most: number }
  | { readonly kind: "empty" }
  | { readonly kind: "other-content"; readonly is: ContentKind | "unknown" }
  | {
      readonly kind: "encoding";
      readonly seems: Encoding;
      /** The first byte that is not UTF-8; undefined where the encoding shows as a whole. */
      readonly wrong: { readonly line: number; readonly column: number; readonly byte: number } | undefined;
    }
  | { readonly kind: "control"; readonly code: number; readonly line: number; readonly column: number };

/** A file of the site that cannot be read. */
export class FileError extends Error {
  readonly source: Pick<SiteFile, "file"> & { readonly kind: FileKind | undefined };
  readonly fault: FileFault;

  constructor(source: FileError["source"], fault: FileFault) {
    super(`${source.file}: ${fault.kind}`);
    this.source = source;
    this.fault = fault;
  }
}

const INSIDE: readonly FileFault["kind"][] = ["too-large", "empty", "other-content", "encoding", "control"];

/** Whether a fault is about what is in a file, and not about where it is. */
export function isInside(fault: FileFault): fault is ContentFault {
  return INSIDE.includes(fault.kind);
}

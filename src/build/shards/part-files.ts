import { createHash } from "node:crypto";
import { lstatSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PART_FILE, type PartFile } from "../../input/part/part-manifest.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { filesBelow } from "../store/files-below.ts";

/** All files of a part as its manifest names them, in the order of their paths; one after the other is read. */
export function listFiles(folder: string): PartFile[] {
  return filesBelow(folder).map(({ path, file }) => {
    const bytes = readFileSync(file);
    return { path, size: bytes.length, sha256: hashOf(bytes) };
  });
}

/** A file of a part, as its manifest says. @throws BuildError where it is another, or is not there */
export function readPartFile(folder: string, { path, size, sha256 }: PartFile): Buffer {
  const at = join(folder, path);
  const refuse = (why: "missing" | "changed"): never => {
    throw new BuildError(say.sitePartFile({ file: `${folder}/${path}`, manifest: `${folder}/${PART_FILE}`, why }));
  };
  if (!lstatSync(at, { throwIfNoEntry: false })?.isFile()) refuse("missing");
  const bytes = readFileSync(at);
  if (bytes.length !== size || hashOf(bytes) !== sha256) refuse("changed");
  return bytes;
}

function hashOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

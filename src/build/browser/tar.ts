/** A file of an archive. */
export interface ArchivedFile {
  readonly path: string;
  readonly bytes: Buffer;
}

const BLOCK = 512;

/**
 * The regular files of a tar archive (POSIX.1-1988 headers: name at 0, size in octal at 124, kind at 156, prefix at 345).
 * @throws Error at a path that leads out
 */
export function filesOfTar(archive: Buffer): ArchivedFile[] {
  const files: ArchivedFile[] = [];
  for (let at = 0; at + BLOCK <= archive.length && archive[at] !== 0; ) {
    const text = (from: number, length: number): string =>
      archive
        .subarray(at + from, at + from + length)
        .toString("latin1")
        .replace(/\0.*$/s, "");
    const size = Number.parseInt(text(124, 12).trim() || "0", 8);
    const path = [text(345, 155), text(0, 100)].filter(Boolean).join("/").replace(/^\.\//, "");
    if (path.startsWith("/") || path.split("/").includes("..")) throw new Error(`an archive holds ${path}`);
    const begin = at + BLOCK;
    if (/^[0\0]?$/.test(text(156, 1))) files.push({ path, bytes: archive.subarray(begin, begin + size) });
    at = begin + Math.ceil(size / BLOCK) * BLOCK;
  }
  return files;
}

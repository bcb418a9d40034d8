import { resolve } from "node:path";

const MODULES = "node_modules/";

/** Folders of the packages that files come from, each once. */
export function packagesOf(files: readonly string[]): string[] {
  const folders = files.flatMap((file) => {
    const at = file.replaceAll("\\", "/").lastIndexOf(MODULES) + MODULES.length;
    if (at < MODULES.length) return [];
    const [first, second] = file.slice(at).split(/[\\/]/);
    return [resolve(file.slice(0, at), first!.startsWith("@") ? `${first}/${second}` : first!)];
  });
  return [...new Set(folders)];
}

import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { type Files, SOUND } from "./sound.ts";

const OURS = join(import.meta.dirname, "../../content/words");

/** Puts the sound project with these changes into the folder `base`. */
export function writeProject(base: string, files: Files): void {
  cpSync(OURS, join(base, "content/words"), { recursive: true });
  for (const [path, content] of Object.entries({ ...SOUND, ...files })) {
    if (content === undefined) continue;
    const file = join(base, path);
    mkdirSync(dirname(file), { recursive: true });
    rmSync(file, { recursive: true, force: true });
    if (content === "folder") mkdirSync(file);
    else if (content === "fifo") execFileSync("mkfifo", [file]);
    else if (typeof content === "object" && "link" in content) symlinkSync(content.link, file);
    else writeFileSync(file, content);
  }
}

/** Runs `use` in the sound project with these changes, in a temporary folder, and removes it. */
export async function inProject<T>(files: Files, use: (base: string) => Promise<T> | T): Promise<T> {
  const base = mkdtempSync(join(tmpdir(), "leaflight-hostile-"));
  try {
    writeProject(base, files);
    return await use(base);
  } finally {
    rmSync(base, { recursive: true, force: true });
  }
}

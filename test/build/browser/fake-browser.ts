import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A folder of programs that stand in a browser's place. */
export interface FakeBrowsers {
  readonly folder: string;
  /** Writes a shell script and gives its path. */
  readonly script: (name: string, lines: string, mode?: number) => string;
  readonly remove: () => void;
}

export function fakeBrowsers(): FakeBrowsers {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-fakes-"));
  return {
    folder,
    script: (name, lines, mode = 0o755) => {
      const path = join(folder, name);
      writeFileSync(path, `#!/bin/sh\n${lines}\n`, { mode });
      return path;
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

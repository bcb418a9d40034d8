import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, posix, relative, sep } from "node:path";

/** An import between two files of the program, by their paths below `src` with `/`. */
export interface Import {
  readonly from: string;
  /** Another file, or the name of a package. */
  readonly to: string;
}

/** What stands between the quotes after `from`, `import` and `import(`; Biome writes all of them this way. */
const IMPORTED = /^\s*(?:import|export)\b[^;]*?\bfrom "([^"]+)"|^\s*import "([^"]+)"|\bimport\("([^"]+)"\)/gm;

/** Every import of the files below a folder, types included. */
export function importsIn(folder: string): Import[] {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts") && !entry.name.endsWith(".d.ts"))
    .map((entry) => join(entry.parentPath, entry.name));
  return files.flatMap((file) => {
    const from = relative(folder, file).split(sep).join("/");
    return [...readFileSync(file, "utf8").matchAll(IMPORTED)].map((match) => {
      const named = (match[1] ?? match[2] ?? match[3])!;
      return { from, to: named.startsWith(".") ? posix.join(posix.dirname(from), named) : named };
    });
  });
}

/** The room that a file stands in: its ring, or a folder of it. */
export function roomOf(file: string): string {
  return dirname(file);
}

/** One circle of a graph as the names along it, or nothing where there is none. */
export function circleIn(edges: readonly Import[]): string[] | undefined {
  const next = Map.groupBy(edges, (edge) => edge.from);
  const done = new Set<string>();
  const walk = (at: string, way: readonly string[]): string[] | undefined => {
    if (way.includes(at)) return [...way.slice(way.indexOf(at)), at];
    if (done.has(at)) return undefined;
    for (const { to } of next.get(at) ?? []) {
      const found = walk(to, [...way, at]);
      if (found) return found;
    }
    done.add(at);
    return undefined;
  };
  for (const at of next.keys()) {
    const found = walk(at, []);
    if (found) return found;
  }
  return undefined;
}

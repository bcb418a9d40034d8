import { readdirSync, readFileSync } from "node:fs";
import { join, posix, sep } from "node:path";

/** A function that `src/output/drawing` exports and that gives text. */
export interface ExportedDrawer {
  readonly name: string;
  /** Its file below the project, with `/`. */
  readonly file: string;
  /** Its type of return as it is written. */
  readonly returns: string;
  /** Files of `src` that import it. */
  readonly usedIn: readonly string[];
}

const ROOT = join(import.meta.dirname, "../..");
export const DRAWING = "src/output/drawing";

/** An exported function up to the end of its head; Biome puts the brace at the end of that line. */
const EXPORTED = /^export function (\w+)[\s\S]*?\): ([^\n]+) \{$/gm;
const IMPORTED = /^import (?:type )?\{([^}]*)\} from "([^"]+)"/gm;

/** Text, or a record that carries a drawing. */
const DRAWN = /^(string|string\[\]|Figure|Figure \| undefined|FanFromAbove|StripSheet\[\]|TemplateSheet\[\])$/;

/** Every exported function of `src/output/drawing` whose return is a drawing or text of one. */
export function exportedDrawers(): ExportedDrawer[] {
  const texts = readdirSync(join(ROOT, "src"), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts"))
    .map((path): readonly [string, string] => [
      posix.join("src", ...path.split(sep)),
      readFileSync(join(ROOT, "src", path), "utf8"),
    ]);
  const uses = texts.flatMap(([file, text]) => usesIn(file, text));
  return texts
    .filter(([file]) => file.startsWith(`${DRAWING}/`))
    .flatMap(([file, text]) =>
      [...text.matchAll(EXPORTED)].map(([, name, returns]) => ({
        name: name!,
        file,
        returns: returns!,
        usedIn: uses.filter((use) => use.of === file && use.name === name).map((use) => use.file),
      })),
    )
    .filter(({ returns }) => DRAWN.test(returns))
    .toSorted((a, b) => (a.file < b.file ? -1 : 1));
}

interface Use {
  readonly name: string;
  readonly of: string;
  readonly file: string;
}

function usesIn(file: string, text: string): Use[] {
  return [...text.matchAll(IMPORTED)].flatMap(([, names, from]) =>
    names!.split(",").map((name) => ({
      name: name.trim().split(" as ")[0]!,
      of: posix.join(posix.dirname(file), from!),
      file,
    })),
  );
}

import { readFileSync } from "node:fs";
import { join } from "node:path";

interface Package {
  readonly scripts: Readonly<Record<string, string>>;
}

const PACKAGE = join(import.meta.dirname, "../../package.json");

/** Words for Node that run a command of the program as its npm script does. @throws Error where no script is for it */
export function commandWords(command: string, ...options: readonly string[]): string[] {
  const { scripts } = JSON.parse(readFileSync(PACKAGE, "utf8")) as Package;
  const [node, ...words] =
    Object.values(scripts)
      .find((script) => script.endsWith(` ${command}`))
      ?.split(" ") ?? [];
  if (node !== "node") throw new Error(`no npm script runs ${command}`);
  return [...words, ...options];
}

import { readFileSync } from "node:fs";
import { join } from "node:path";

interface Package {
  readonly scripts: Readonly<Record<string, string>>;
}

const PACKAGE = join(import.meta.dirname, "../../package.json");

/** Words for Node that run a command of the program as its npm script does; a test's own command runs as a build does. */
export function commandWords(command: string, ...options: readonly string[]): string[] {
  const { scripts } = JSON.parse(readFileSync(PACKAGE, "utf8")) as Package;
  const script = Object.values(scripts).find((one) => one.endsWith(` ${command}`)) ?? scripts["build"]!;
  const ofNode = script.split(" ").slice(1, -1);
  return [...ofNode, command, ...options];
}

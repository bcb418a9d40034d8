import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inspect } from "node:util";
import * as say from "../../words/messages.ts";
import { printable, shortened } from "../../words/printable.ts";

/** Where details of faults are written below the project. */
const FOLDER = ".cache/faults";

/** The most letters of what a fault says. */
const MOST = 300;

/** One sentence about a fault of the program; its details are written into a file of the project `base`. */
export function programFault(error: unknown, base: string): string {
  const causes = causesOf(error);
  const first = causes.at(-1);
  const fault = shortened(printable(first instanceof Error ? first.message : String(first)), MOST).replace(/\.$/, "");
  const file = writeDetails(causes, base);
  try {
    return file === undefined ? say.checkProgramFaultUnwritten({ fault }) : say.checkProgramFault({ fault, file });
  } catch {
    // There may be no words yet to say it with.
    return `Leaflight itself failed: ${fault}.${file === undefined ? "" : ` Details: ${file}`}`;
  }
}

/** An error and what is behind it, as the runtime and Eleventy keep it; the first cause comes last. */
function causesOf(error: unknown): unknown[] {
  const causes: unknown[] = [];
  for (let at: unknown = error; at !== undefined && !causes.includes(at); at = behind(at)) causes.push(at);
  return causes;
}

function behind(error: unknown): unknown {
  if (!(error instanceof Error)) return undefined;
  return error.cause ?? (error as { readonly originalError?: unknown }).originalError;
}

function writeDetails(causes: readonly unknown[], base: string): string | undefined {
  const details = causes.map((one) => inspect(one, { depth: 4 })).join("\n\n");
  const name = createHash("sha256").update(details).digest("hex").slice(0, 8);
  const file = `${FOLDER}/${name}.txt`;
  try {
    mkdirSync(join(base, FOLDER), { recursive: true });
    writeFileSync(join(base, file), `${details}\n`);
    return file;
  } catch {
    return undefined;
  }
}

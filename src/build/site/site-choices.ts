import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseEnv } from "node:util";
import { URL_VARIABLE } from "../../input/settings/settings.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { diskFault } from "../errors/disk-fault.ts";
import { takeOptions } from "./take-options.ts";

/** What a command can be told of its site: by an option, by a variable of the environment, or by one in the project's `.env`. */
export const SITE_VARIABLES = {
  content: "LEAFLIGHT_CONTENT",
  output: "LEAFLIGHT_OUTPUT",
  url: URL_VARIABLE,
} as const;

export type SiteChoice = keyof typeof SITE_VARIABLES;

/** The choices of a site among a command's words, and the words without them. */
export interface TakenChoices {
  readonly said: Readonly<Partial<Record<SiteChoice, string>>>;
  readonly rest: readonly string[];
}

const VARIABLES_FILE = ".env";

/** Takes `--content folder` and the like out of a command's words. @throws BuildError for one without a value or said twice */
export function takeChoices(words: readonly string[], known: readonly SiteChoice[]): TakenChoices {
  const said: Partial<Record<SiteChoice, string>> = {};
  const taken = takeOptions(words, known);
  for (const { name, value } of taken.said) {
    if (said[name] !== undefined) throw new BuildError(say.siteOptionTwice({ option: `--${name}` }));
    said[name] = value;
  }
  return { said, rest: taken.rest };
}

/** Options as they are written. */
export function optionNames(known: readonly string[]): string[] {
  return known.map((name) => `--${name}`);
}

/**
 * Makes an option the strongest, then the environment, then the project's `.env`; of that file only our own variables are
 * taken. An empty variable states nothing. @throws BuildError where the file cannot be read
 */
export function settleChoices(base: string, { said }: Pick<TakenChoices, "said">): void {
  const filed = readVariables(base);
  for (const [name, variable] of Object.entries(SITE_VARIABLES)) {
    const value = said[name as SiteChoice] ?? (process.env[variable] || filed[variable]);
    if (value) process.env[variable] = value;
  }
}

/** What is chosen, or undefined where the usual is meant. */
export function choice(name: SiteChoice): string | undefined {
  return process.env[SITE_VARIABLES[name]] || undefined;
}

function readVariables(base: string): Record<string, string | undefined> {
  const file = join(base, VARIABLES_FILE);
  if (!existsSync(file)) return {};
  try {
    return parseEnv(readFileSync(file, "utf8").replace(/^\uFEFF/, ""));
  } catch (error) {
    throw diskFault(error, file) ?? new BuildError(say.siteVariablesFile({ file: VARIABLES_FILE }));
  }
}

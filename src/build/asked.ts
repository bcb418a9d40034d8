import { parseArgs } from "node:util";
import { rowText } from "../words/lists.ts";
import * as say from "../words/messages.ts";
import { BuildError } from "./errors/build-error.ts";

/** What is asked of `npm run check` and `npm run build` behind `--`. */
export interface Asked {
  /** Folders of the only kits to make, drafts too; none for the whole site. */
  readonly kits: readonly string[];
  /** Whether a seat whose book does not fit stops the command. */
  readonly stopAtMisfit: boolean;
  /** Whether packets are printed. */
  readonly packets: boolean;
}

/** Options without a value. */
export type Flag = "stop-at-misfit" | "no-packets";

/** `flags` are the command's, `others` options that were read before. @throws BuildError for options that the command does not have */
export function readAsked(words: readonly string[], flags: readonly Flag[], others: readonly string[] = []): Asked {
  const { positionals, tokens } = parseArgs({
    args: [...words],
    options: Object.fromEntries(flags.map((flag) => [flag, { type: "boolean" }] as const)),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const said = new Set<string>();
  for (const token of tokens) {
    if (token.kind !== "option") continue;
    if (token.value !== undefined || !flags.some((flag) => flag === token.name)) {
      const known = rowText([...flags.map((flag) => `--${flag}`), ...others]);
      throw new BuildError(say.askedOption({ option: token.rawName, known }));
    }
    said.add(token.name);
  }
  return { kits: positionals, stopAtMisfit: said.has("stop-at-misfit"), packets: !said.has("no-packets") };
}

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
}

/** `others` are options that were read before. @throws BuildError for options that the command does not have */
export function readAsked(words: readonly string[], others: readonly string[] = []): Asked {
  const known = { "stop-at-misfit": { type: "boolean", default: false } } as const;
  const { positionals, tokens, values } = parseArgs({
    args: [...words],
    options: known,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  for (const token of tokens) {
    if (token.kind !== "option" || (Object.hasOwn(known, token.name) && token.value === undefined)) continue;
    throw new BuildError(say.askedOption({ option: token.rawName, known: rowText(["--stop-at-misfit", ...others]) }));
  }
  return { kits: positionals, stopAtMisfit: values["stop-at-misfit"] === true };
}

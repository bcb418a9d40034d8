import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";

/** What may stand behind an option. */
const EXAMPLES = {
  content: "sites/north",
  output: "north",
  url: "https://example.org/folds/",
  shard: "2/3",
  only: "little-gull",
} as const;

export type ValueOption = keyof typeof EXAMPLES;

/** An option with what stands behind it. */
export interface SaidOption<Name extends ValueOption> {
  readonly name: Name;
  readonly value: string;
}

/** Takes options with values, `--content folder` or `--content=folder`, out of a command's words. @throws BuildError for one without a value */
export function takeOptions<Name extends ValueOption>(
  words: readonly string[],
  known: readonly Name[],
): { readonly said: readonly SaidOption<Name>[]; readonly rest: readonly string[] } {
  const said: SaidOption<Name>[] = [];
  const rest: string[] = [];
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i]!;
    const [option, stated] = parts(word);
    const name = known.find((one) => option === `--${one}`);
    if (name === undefined) {
      rest.push(word);
      continue;
    }
    const next = words[i + 1];
    const value = stated ?? (next === undefined || next.startsWith("--") ? "" : next);
    if (stated === undefined && value !== "") i += 1;
    if (value.trim() === "") throw new BuildError(say.siteOptionEmpty({ option, example: EXAMPLES[name] }));
    said.push({ name, value });
  }
  return { said, rest };
}

function parts(word: string): [option: string, value: string | undefined] {
  const at = word.indexOf("=");
  return word.startsWith("--") && at > 0 ? [word.slice(0, at), word.slice(at + 1)] : [word, undefined];
}

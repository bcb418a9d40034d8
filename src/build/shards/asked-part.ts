import { MOST_PARTS } from "../../input/part/part-manifest.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { takeOptions } from "../site/take-options.ts";
import type { Shard } from "./deal.ts";

/** A part of a site that is to be made alone and joined later: one of several equal ones, or kits that are picked by hand. */
export type AskedPart = { readonly shard: Shard } | { readonly only: readonly string[] };

/** Where a part is made unless another folder is asked for. */
export function usualOutput(part: AskedPart): string {
  return "shard" in part
    ? `parts/${part.shard.number}-of-${part.shard.of}`
    : `parts/${part.only.join("-").slice(0, 60)}`;
}

/** What was taken out of a command's words. */
export interface TakenPart {
  readonly part: AskedPart | undefined;
  readonly rest: readonly string[];
}

/** The options that `takePart` takes. */
export const PART_OPTIONS = ["shard", "only"] as const;

/** Takes `--shard 2/3` or `--only moon --only gull` out of a command's words. @throws BuildError for what is no part */
export function takePart(words: readonly string[]): TakenPart {
  const { said, rest } = takeOptions(words, PART_OPTIONS);
  const [shards, only] = PART_OPTIONS.map((name) => said.filter((one) => one.name === name).map(({ value }) => value));
  if (shards!.length > 1) throw new BuildError(say.siteOptionTwice({ option: "--shard" }));
  if (shards!.length > 0 && only!.length > 0) throw new BuildError(say.sitePartTwoWays());
  if (shards!.length > 0) return { part: { shard: shardOf(shards![0]!) }, rest };
  return { part: only!.length > 0 ? { only: [...new Set(only)] } : undefined, rest };
}

function shardOf(given: string): Shard {
  const [, number, of] = /^(\d{1,3})\/(\d{1,3})$/.exec(given) ?? [];
  const shard = { number: Number(number), of: Number(of) };
  if (!(shard.number >= 1 && shard.number <= shard.of))
    throw new BuildError(say.sitePartNoShard({ given, most: MOST_PARTS }));
  return shard;
}

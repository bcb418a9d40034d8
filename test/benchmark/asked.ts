import { parseArgs } from "node:util";
import { PART_NAMES, type PartName } from "./line.ts";

/** What is asked of the benchmark behind `--`. */
export interface Asked {
  readonly only: readonly PartName[];
  readonly quick: boolean;
  readonly full: boolean;
  readonly accept: boolean;
}

/** @throws Error for an option or a part that there is not */
export function readAsked(args: readonly string[]): Asked {
  const flag = { type: "boolean", default: false } as const;
  const options = {
    only: { type: "string", multiple: true, default: [] as string[] },
    quick: flag,
    full: flag,
    accept: flag,
  } as const;
  const { only, ...flags } = parseArgs({ args: [...args], options }).values;
  const unknown = only.filter((name) => !PART_NAMES.some((part) => part === name));
  if (unknown.length > 0) throw new Error(`no part ${unknown.join(", ")}; parts are ${PART_NAMES.join(", ")}`);
  if (flags.quick && (flags.full || flags.accept)) throw new Error("--quick goes with neither --full nor --accept");
  return { ...flags, only: only.length === 0 ? PART_NAMES : (only as PartName[]) };
}

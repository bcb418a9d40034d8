import { rmSync } from "node:fs";
import { join } from "node:path";
import { commandWords } from "../../site/command.ts";
import type { Figure } from "../figure.ts";
import { measure } from "../process/measured.ts";
import { strangersSite } from "../process/strangers-site.ts";
import { type Point, reckon } from "../reckon.ts";
import type { Scale } from "../scale.ts";
import { yardstick } from "../yardstick.ts";

/** What is reckoned: so many kits, on so many machines. */
const KITS = 10_000;
const MACHINES = 8;

/** Processor for parts of a site of so many kits, and for joining them, s. */
interface Joined {
  readonly parts: Point;
  readonly joining: Point;
}

/** Sites of two sizes made in two parts and joined: what each kit takes, what any site takes, and by both what very many kits take. */
export async function measureShards({ quick }: Scale): Promise<Figure[]> {
  const turn = yardstick();
  const [few, many] = [await joined(quick ? 4 : 10), await joined(quick ? 12 : 100)];
  const part = reckon(few.parts, many.parts);
  const joining = reckon(few.joining, many.joining);
  return [
    { line: "part-kit", value: part.each, yardstick: turn },
    { line: "join-kit", value: joining.each, yardstick: turn },
    { line: "part-10000", value: part.of(KITS / MACHINES) / 60 },
    { line: "join-10000", value: joining.of(KITS) / 60 },
  ];
}

async function joined(count: number): Promise<Joined> {
  const site = strangersSite(count);
  try {
    const cpu = async (command: string, ...words: readonly string[]): Promise<number> =>
      (await measure(site.folder, commandWords(command, ...words, "--no-packets"))).cpu;
    const parts = [
      await cpu("src/build/build.ts", "--shard", "1/2"),
      await cpu("src/build/build.ts", "--shard", "2/2"),
    ];
    // The machine that joins parts has made none of their kits.
    rmSync(join(site.folder, ".cache/made"), { recursive: true });
    const joining = await cpu("src/build/merge.ts", "parts/1-of-2", "parts/2-of-2");
    return {
      parts: { kits: count / 2, taken: (parts[0]! + parts[1]!) / 2 },
      joining: { kits: count, taken: joining },
    };
  } finally {
    site.remove();
  }
}

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type PublishedRound, roundData } from "../../output/data/round-data.ts";
import { roundScript } from "../../output/data/round-script.ts";

/** Writes a kit's data of the view in the round from its pattern.json, as a script that also loads from the disk. */
export function writeRoundData(folder: string): void {
  const published: PublishedRound = JSON.parse(readFileSync(join(folder, "pattern.json"), "utf8"));
  writeFileSync(join(folder, "round-data.js"), roundScript(roundData(published)));
}

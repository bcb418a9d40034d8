import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { parseArgs } from "node:util";
import { faultRunner } from "./fault-runner.ts";
import { type Fault, plantFaults } from "./plant.ts";
import { sample } from "./sample.ts";

interface PlantedFault {
  readonly file: string;
  readonly fault: Fault;
}

const ROOT = join(import.meta.dirname, "../..");
/** Share of the planted faults that a room's own tests must catch. */
const LEAST = 0.85;

/**
 * `npm run faults -- [rooms of src] [--since main] [--most 70] [--seed 1]`: plants small faults in these rooms (else in
 * all of src/core, or with `--since` in the rooms whose files changed), one at a time, and tells which of them the room's
 * own tests, in the same place below test, let pass.
 */
const { values, positionals } = parseArgs({
  options: {
    since: { type: "string" },
    most: { type: "string", default: "70" },
    seed: { type: "string", default: "1" },
  },
  allowPositionals: true,
});
const changed = values.since === undefined ? undefined : filesChangedSince(values.since);
const rooms = positionals.length > 0 ? positionals : changed ? roomsOf(changed) : roomsOf(filesBelow("src/core"));
const weak: string[] = [];
for (const room of rooms) if (!(await isCaught(room))) weak.push(room);
if (weak.length > 0) {
  console.error(
    `Less than ${LEAST * 100}% caught in ${weak.join(", ")}: write tests that notice what is listed above.`,
  );
  process.exitCode = 1;
}

async function isCaught(room: string): Promise<boolean> {
  const all = filesBelow(join("src", room))
    .filter((file) => changed?.includes(file) ?? true)
    .flatMap(faultsIn);
  const faults = sample(all, Number(values.most), Number(values.seed));
  if (faults.length === 0) return true;
  await using runner = await faultRunner(ROOT, `test/${room}/`);
  const missed: PlantedFault[] = [];
  for (const one of faults) if (!(await runner.notices(join(ROOT, one.file), one.fault.source))) missed.push(one);
  const share = 1 - missed.length / faults.length;
  console.log(`${room}: ${faults.length - missed.length} of ${faults.length} caught, ${Math.floor(share * 100)}%`);
  for (const { file, fault } of missed)
    console.log(`  not noticed  ${file}:${fault.line}  ${short(fault.was)}  ->  ${short(fault.now)}`);
  return share >= LEAST;
}

function faultsIn(file: string): PlantedFault[] {
  return plantFaults(readFileSync(join(ROOT, file), "utf8")).map((fault) => ({ file, fault }));
}

function filesBelow(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .toSorted();
}

function roomsOf(files: readonly string[]): string[] {
  return [...new Set(files.map((file) => relative("src", dirname(file)).replaceAll("\\", "/")))].filter(
    (room) => room !== "core",
  );
}

function filesChangedSince(revision: string): string[] {
  const names = execFileSync("git", ["diff", "--name-only", "--diff-filter=d", revision, "--", "src/core"], {
    cwd: ROOT,
  });
  return names
    .toString()
    .split("\n")
    .filter((name) => name.endsWith(".ts"));
}

function short(text: string): string {
  const line = text.replaceAll(/\s+/g, " ");
  return line.length > 70 ? `${line.slice(0, 67)}...` : line;
}

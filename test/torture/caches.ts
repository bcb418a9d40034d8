import { mkdirSync, readdirSync, rmSync, symlinkSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PACKETS } from "../site/project.ts";
import { type Bench, hold } from "./trial.ts";
import { type TwoStates, twoStates } from "./two-states.ts";

const replaced = (path: string, by: () => void): void => {
  rmSync(path, { recursive: true });
  by();
};

/** What can befall a kept file. */
const DAMAGES: Readonly<Record<string, (path: string) => void>> = {
  halved: (path) => truncateSync(path, 5000),
  empty: (path) => truncateSync(path, 0),
  "of five bytes": (path) => writeFileSync(path, "%PDF-"),
  "another packet": (path) => writeFileSync(path, "%PDF-1.7\n%%EOF\n"),
  "a folder": (path) => replaced(path, () => mkdirSync(path)),
  "a link to a device": (path) => replaced(path, () => symlinkSync("/dev/zero", path)),
};

/** Damages what is kept in each way, a file or all of them; the site comes out the same, and the damage is told in one line. */
export async function damageCaches(kinds: number, bench: Bench, given?: TwoStates): Promise<void> {
  const states = given ?? (await twoStates());
  const folder = join(states.project.folder, PACKETS);
  await states.build("old");
  for (const [name, damage] of Object.entries(DAMAGES).slice(0, kinds)) {
    if (!bench.goesOn()) break;
    const kept = readdirSync(folder);
    const hurt = kept.filter((_, i) => i === 0 || bench.random() < 0.5);
    for (const file of hurt) damage(join(folder, file));
    const { code, told } = await states.build("old");
    hold(code === 0, `kept files ${name}: ended with ${code}\n${told}`);
    hold(states.state() === "old", `kept files ${name}: dist is ${states.state()}`);
    hold(
      (told.match(/were damaged|was damaged/g)?.length ?? 0) <= 1,
      `kept files ${name}: told more than once\n${told}`,
    );
    bench.say(`${hurt.length} of ${kept.length} kept files ${name}`);
  }
  rmSync(folder, { recursive: true });
  writeFileSync(folder, "no folder");
  const { code, told } = await states.build("old");
  hold(code === 0 && /nothing is kept/.test(told) && states.state() === "old", `a file in its place:\n${told}`);
  rmSync(folder);
  if (!given) states.project.remove();
}

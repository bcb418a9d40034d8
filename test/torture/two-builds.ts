import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Bench, hold } from "./trial.ts";
import { ADDRESSES, holdNothingLeft, type State, type TwoStates, twoStates } from "./two-states.ts";

/** Starts builds for two addresses at once: both end well, and dist is one of them whole. */
export async function buildTwice(count: number, bench: Bench, given?: TwoStates): Promise<void> {
  const states = given ?? (await twoStates());
  for (let i = 0; i < count && bench.goesOn(); i += 1) {
    const ends = await Promise.all([states.build("old"), states.build("new")]);
    for (const { code, told } of ends) hold(code === 0, `one of two builds ended with ${code}\n${told}`);
    const found = states.state();
    hold(found === "old" || found === "new", `after two builds at once dist is ${found}`);
    const other: State = found === "old" ? "new" : "old";
    const page = readFileSync(join(states.project.folder, "dist/index.html"), "utf8");
    hold(!page.includes(ADDRESSES[other]), "one build publishes the other's address");
    const waited = ends.filter(({ told }) => /Another build of dist is running/.test(told)).length;
    hold(waited <= 1, "both builds waited");
    holdNothingLeft(states.project);
  }
  bench.say("two builds for two addresses at once");
  if (!given) states.project.remove();
}

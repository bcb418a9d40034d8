import { setTimeout as sleep } from "node:timers/promises";
import { newSwapping } from "../build/making/swapping.ts";
import { type Bench, hold } from "./trial.ts";
import { type State, type TwoStates, twoStates } from "./two-states.ts";

/** Kills builds that print at random moments; after each, dist is whole, and the next start leaves nothing behind. */
export async function killBuilds(count: number, bench: Bench, given?: TwoStates): Promise<void> {
  const states = given ?? (await twoStates());
  const length = await lengthOfBuild(states);
  let done = 0;
  let cut = 0;
  for (; done < count && bench.goesOn(); done += 1) {
    const next: State = states.state() === "old" ? "new" : "old";
    states.forget();
    const running = states.start(next);
    const after = Math.round(bench.random() * length);
    await Promise.race([sleep(after), running.ended]);
    running.child.kill("SIGKILL");
    const { signal } = await running.ended;
    if (signal === "SIGKILL") cut += 1;
    const found = states.state();
    await states.nextStart();
    const then = states.state();
    hold(then === "old" || then === "new", `killed after ${after} ms: dist is ${found}, after the next start ${then}`);
    hold(found === then || found === "none", `killed after ${after} ms: dist is ${found}`);
    if ((done + 1) % 10 === 0) bench.say(`${done + 1} killed`);
  }
  bench.say(`${done} of ${count} builds of ${Math.round(length)} ms killed at random, ${cut} before they ended`);
  if (!given) states.project.remove();
}

async function lengthOfBuild(states: TwoStates): Promise<number> {
  states.forget();
  const began = performance.now();
  await states.build("old");
  return performance.now() - began;
}

const STEPS = ["make", "journal", "aside", "place", "seal", "clear"] as const;

/** Kills a transaction before a step, and the start that mends it before another; then one goes through. */
export async function killSwaps(count: number, { random, say }: Bench): Promise<void> {
  const any = (): (typeof STEPS)[number] => STEPS[Math.floor(random() * STEPS.length)]!;
  for (let i = 0; i < count; i += 1) {
    const swapping = newSwapping();
    await swapping.make("old");
    const killed = [any(), any()];
    for (const step of killed) {
      const { signal } = await swapping.make("new", step);
      hold(signal === "SIGKILL", `not killed before ${step}`);
      const allowed = step === "place" ? ["none"] : ["old", "new"];
      hold(allowed.includes(swapping.word()), `killed before ${step}: dist is ${swapping.word()}`);
    }
    await swapping.make("last");
    hold(swapping.word() === "last", `after kills before ${killed}: dist is ${swapping.word()}`);
    hold(swapping.left().length === 0, `after kills before ${killed}: left ${swapping.left()}`);
    swapping.remove();
  }
  say(`${2 * count} swaps killed before a step, ${count} of them while they mended another`);
}

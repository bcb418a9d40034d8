import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inTransaction } from "../../../src/build/making/transaction.ts";
import "../../english.ts";

/**
 * One transaction in a process of its own: makes a site of files that hold a word, and kills itself before a step where one
 * is named. Says what it was told. node one-swap.ts <base> <word> <number of files> [step]
 */
const [base = "", word = "", count, stop] = process.argv.slice(2);
const step = (name: string): void => {
  if (name === stop) process.kill(process.pid, "SIGKILL");
};
try {
  await inTransaction({ base, output: "dist", step, tell: console.log }, async (folder) => {
    mkdirSync(join(folder, "kits"), { recursive: true });
    step("make");
    for (let i = 0; i < Number(count); i += 1) writeFileSync(join(folder, "kits", `${i}.txt`), word.repeat(1000));
  });
} catch (error) {
  console.error((error as Error).name, (error as Error).message);
  process.exitCode = 1;
}

import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { classJobs } from "../../../src/build/print/class-packets.ts";
import { printJobs } from "../../../src/build/print/print-jobs.ts";
import { type Making, runBuild, STAGES, type Stage } from "../../../src/build/stages.ts";

/** Makes the pages of the project in the current folder and prints what is of whole classes: no kit's packet and no seat's. */
const base = process.cwd();
const run = { base, output: "dist", aside: ".cache/aside", kits: [], stopAtMisfit: false, packets: true };
for (const folder of [run.output, run.aside]) mkdirSync(folder, { recursive: true });
const printTeachers: Stage = {
  name: "print",
  makes: [],
  run: async ({ library: { classes, classView } }: Making) => {
    const jobs = classes
      .flatMap(({ slug }) => classJobs(join(base, "dist"), classView(slug)))
      .filter(({ of }) => of.seat === undefined);
    const log = () => ({ line: () => {}, note: () => {}, step: () => {}, end: () => {} });
    await printJobs(join(base, "dist"), jobs, { address: undefined, log });
  },
};
const before = STAGES.filter(({ name }) => ["kits", "rest", "fonts"].includes(name));
await runBuild(run, [...before, printTeachers]);

import { join } from "node:path";
import { currentLibrary } from "../../../src/build/library/current-library.ts";
import { classJobs } from "../../../src/build/print/class-packets.ts";
import { printJobs } from "../../../src/build/print/print-jobs.ts";
import { type Run, STAGES } from "../../../src/build/stages.ts";

/** Makes the pages of the project in the current folder and prints what is of whole classes: no kit's packet and no seat's. */
const base = process.cwd();
const run: Run = { base, output: join(base, "dist"), serving: false, kits: [], stopAtMisfit: false, packets: true };
for (const name of ["read", "pages", "fonts"]) await STAGES.find((stage) => stage.name === name)!.run(run);
const jobs = currentLibrary()
  .classes.flatMap((view) => classJobs(run.output, view))
  .filter(({ of }) => of.seat === undefined);
const log = () => ({ line: () => {}, note: () => {}, step: () => {}, end: () => {} });
await printJobs(run.output, jobs, { address: undefined, log });

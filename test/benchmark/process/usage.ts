import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { isMainThread } from "node:worker_threads";

/** Brought into every Node that a measured command starts: at its end each writes what it used, threads included, into a folder. */
const folder = process.env.LEAFLIGHT_USAGE;
if (folder !== undefined && isMainThread)
  process.on("exit", () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    const usage = { cpu: (userCPUTime + systemCPUTime) / 1e6, peak: maxRSS * 1024 };
    writeFileSync(join(folder, `${process.pid}.json`), JSON.stringify(usage));
  });

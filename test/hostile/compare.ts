import "../english.ts";
import { compareCheckAndBuild } from "./check-equals-build.ts";

/** `node test/hostile/compare.ts <sites> <prints>`: in a process of its own, as Eleventy and the library have to meet in one. Prints the tally. */
const [sites, print] = process.argv.slice(2).map(Number);
console.log(JSON.stringify(await compareCheckAndBuild({ sites: sites!, print: print! })));

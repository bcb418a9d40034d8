import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import type { FrontMatter } from "./schema.ts";

/** Versions stand newest first, each under a name of its own; two may share a day. @throws ProblemError */
export function checkVersions(versions: FrontMatter["versions"]): void {
  for (const [i, { version, date }] of versions.entries()) {
    const above = versions[i - 1];
    if (above && date > above.date) {
      throw problem(["versions", i, "date"], {
        given: say.frontVersionOrder({ date, above: above.date }),
        allowed: say.frontNewestFirst(),
        remedy: say.frontOrderVersions(),
      });
    }
    if (versions.findIndex((one) => one.version === version) !== i) {
      throw problem(["versions", i, "version"], {
        given: say.frontVersionTwice({ version }),
        allowed: say.frontVersionNames(),
        remedy: say.frontRename(),
      });
    }
  }
}

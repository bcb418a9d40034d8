import { Problem } from "../../core/problem.ts";
import type { FrontMatter } from "./schema.ts";

/** Versions stand newest first, each under a name of its own; two may share a day. @throws Problem */
export function checkVersions(versions: FrontMatter["versions"]): void {
  for (const [i, { version, date }] of versions.entries()) {
    const above = versions[i - 1];
    if (above && date > above.date) {
      throw new Problem(`versions.${i}.date`, {
        given: `${date} below ${above.date}`,
        allowed: "newest first: each date the same as the one above it or earlier",
        remedy: "put the versions in order or correct the date",
      });
    }
    if (versions.findIndex((one) => one.version === version) !== i) {
      throw new Problem(`versions.${i}.version`, {
        given: `a second version "${version}"`,
        allowed: "a name of its own for each version",
        remedy: "rename one of them",
      });
    }
  }
}

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import * as say from "../../words/messages.ts";
import { facesFor } from "../fonts/faces.ts";
import { type PackageLicence, packageLicence } from "./package-licence.ts";
import { packagesOf } from "./reached.ts";

/** Below the site. */
export const LICENCES = "licences.txt";

const RULE = "=".repeat(72);

/**
 * Writes the terms of all that a built site holds of others: fonts, and the packages that the bundled `scripts` (their source
 * files) come from. @throws BuildError where one of them may not be passed on
 */
export function writeLicences(output: string, scripts: readonly string[]): void {
  const faces = [...facesFor("site"), ...facesFor("print")].map(({ source }) => source);
  const folders = packagesOf([...scripts, ...faces]);
  const own = readFileSync(join(import.meta.dirname, "../../../LICENSE"), "utf8");
  writeFileSync(join(output, LICENCES), licencesText(own, folders.map(packageLicence)));
}

/** Packages by name and version, whatever order they came in. */
export function licencesText(own: string, packages: readonly PackageLicence[]): string {
  const sorted = packages.toSorted((a, b) => (`${a.name}@${a.version}` < `${b.name}@${b.version}` ? -1 : 1));
  const parts = [
    `${say.licencesHeading()}\n\n${say.licencesText()}`,
    `Leaflight\n\n${own.trim()}`,
    ...sorted.map(({ text, ...one }) => `${say.licencesPackage(one)}\n\n${text}`),
  ];
  return `${parts.join(`\n\n${RULE}\n\n`)}\n`;
}

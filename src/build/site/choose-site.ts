import { existsSync, lstatSync, readdirSync, statSync } from "node:fs";
import { join, relative, resolve, sep } from "node:path";
import { PROJECT_CONTENT, readContentFrom } from "../../input/files/content-folder.ts";
import { pathBelow } from "../../input/files/folders.ts";
import { PART_FILE } from "../../input/part/part-manifest.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { LICENCES } from "../licences/write-licences.ts";
import { choice, type SiteChoice, settleChoices, takeChoices } from "./site-choices.ts";

/** The folder that a build makes unless another is asked for. */
export const USUAL_OUTPUT = "dist";

/** Folders of the project that are no place for a site. */
const TAKEN = ["src", "layouts", "test", "node_modules", ".git", ".github", ".ci", ".cache"];

/** What a built site and a part have at their top. */
const AT_TOP = { site: ["index.html", "assets", LICENCES], part: [PART_FILE] } as const;

/** The words of a command without the site's choices; from then on the chosen content is read. @throws BuildError */
export function chooseSite(base: string, words: readonly string[], known: readonly SiteChoice[]): readonly string[] {
  const taken = takeChoices(words, known);
  settleChoices(base, taken);
  readContentFrom(contentFolder(base, choice("content")));
  return taken.rest;
}

/** The folder to make, as it was asked for, or the usual one. @throws BuildError for one that a build must not replace */
export function outputFolder(
  base: string,
  content: string,
  made: keyof typeof AT_TOP = "site",
  usual: string = USUAL_OUTPUT,
): string {
  const output = choice("output") ?? usual;
  const target = resolve(base, output);
  const refuse = (why: string): never => {
    throw new BuildError(say.siteOutput({ output, why, made }));
  };
  const kept = [resolve(base, content), ...[PROJECT_CONTENT, ...TAKEN].map((name) => join(base, name))];
  if (holds(target, base) || kept.some((folder) => holds(target, folder) || holds(folder, target)))
    refuse(say.siteOutputOwn());
  const isUsual = made === "site" && target === join(base, USUAL_OUTPUT);
  if (!isUsual && !isReplaceable(target, AT_TOP[made])) refuse(say.siteOutputFull({ made }));
  return output;
}

/** @throws BuildError for what is no folder, or holds the project */
function contentFolder(base: string, given: string | undefined): string {
  if (given === undefined) return PROJECT_CONTENT;
  const folder = resolve(base, given);
  if (!(statSync(folder, { throwIfNoEntry: false })?.isDirectory() ?? false))
    throw new BuildError(say.siteContentMissing({ content: given }));
  if (holds(folder, base) || TAKEN.some((name) => holds(join(base, name), folder)))
    throw new BuildError(say.siteContentOwn({ content: given }));
  return pathBelow(base, folder);
}

/** Whether `inner` is the folder `outer` or lies in it. */
function holds(outer: string, inner: string): boolean {
  const way = relative(outer, inner);
  return way === "" || (way !== ".." && !way.startsWith(`..${sep}`) && !/^[A-Za-z]:|^\//.test(way));
}

/** An empty place or what was made there before: what else lies there would be lost. */
function isReplaceable(target: string, atTop: readonly string[]): boolean {
  const found = lstatSync(target, { throwIfNoEntry: false });
  if (!found?.isDirectory()) return true;
  return readdirSync(target).length === 0 || atTop.every((name) => existsSync(join(target, name)));
}

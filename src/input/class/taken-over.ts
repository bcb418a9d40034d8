import { dirname, join } from "node:path";
import * as say from "../../words/messages.ts";
import { atPlace } from "../files/at-place.ts";
import { foldersIn, pathBelow, slugOf } from "../files/folders.ts";
import { afterFrontMatter, readFrontMatter } from "../files/front-matter.ts";
import { pageText } from "../files/page-text.ts";
import { problem } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";
import type { YamlFile } from "../files/yaml.ts";
import { takesFrom, withTaken } from "./take-over.ts";

/** A class's file: its front matter with what it takes over from another class, and where its text stands. */
export interface ClassFile {
  readonly yaml: YamlFile;
  /** The file whose text the class's page tells, and all of it. */
  readonly told: { readonly file: string; readonly text: string };
}

/**
 * Reads a class's file in the project `base`. With `from` it takes over what it does not state itself: all of another class but
 * its days, state and seats. Sessions are as many days after the first as there, and an empty text is that of the other.
 * @throws KitError
 */
export function readClassFile(folder: string, base: string, taking: readonly string[] = []): ClassFile {
  const file = pathBelow(base, join(folder, "index.md"));
  const text = pageText({ base, file, home: pathBelow(base, folder) });
  const yaml = readFrontMatter(file, text);
  const { value } = yaml;
  if (takesFrom(value) === undefined) return { yaml, told: { file, text } };
  const slug = slugOf(folder);
  const from = atPlace(file, yaml, () => folderNamed(takesFrom(value)!, { folder, base, taking: [...taking, slug] }));
  const other = readClassFile(from, base, [...taking, slug]);
  const { told } = afterFrontMatter(text).body.trim() === "" ? other : { told: { file, text } };
  return { yaml: { ...yaml, value: withTaken(value, other.yaml.value) }, told };
}

/** A class's folder, and those that take over from it. */
interface Taking {
  readonly folder: string;
  readonly base: string;
  readonly taking: readonly string[];
}

/** The folder of another class. @throws ProblemError where there is none of that name, or it takes over from this one */
function folderNamed(name: string, { folder, base, taking }: Taking): string {
  const others = foldersIn(dirname(folder), base).filter((one) => !taking.includes(slugOf(one)));
  const found = others.find((one) => slugOf(one) === name);
  if (found !== undefined) return found;
  throw problem(["from"], {
    given: say.frontGivenText({ value: shortValue(name) }),
    allowed: say.frontAClass({ classes: nameList(others.map(slugOf)) }),
    remedy: say.frontCorrectName(),
  });
}

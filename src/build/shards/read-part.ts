import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PART_FILE, PART_SCHEMA, type PartManifest, partManifest } from "../../input/part/part-manifest.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";

/** A part in its folder, as it was named. */
export interface Part extends PartManifest {
  readonly folder: string;
}

/** Reads a part's manifest. @throws BuildError where the folder is no part */
export function readPart(folder: string): Part {
  const file = join(folder, PART_FILE);
  const refuse = (why: "missing" | "damaged" | "version"): never => {
    throw new BuildError(say.sitePartUnreadable({ folder, file: PART_FILE, why }));
  };
  if (!existsSync(file)) refuse("missing");
  const stated = jsonOf(readFileSync(file, "utf8"));
  if (typeof stated !== "object" || stated === null) return refuse("damaged");
  if ("schema" in stated && stated.schema !== PART_SCHEMA) refuse("version");
  const { data } = partManifest.safeParse(stated);
  return data ? { ...data, folder } : refuse("damaged");
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

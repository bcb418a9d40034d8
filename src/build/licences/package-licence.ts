import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { ALLOWED_LICENCES, isAllowed } from "./allowed.ts";

/** An installed package with the terms that it comes under. */
export interface PackageLicence {
  readonly name: string;
  readonly version: string;
  /** As the package states it: an SPDX expression. */
  readonly licence: string;
  /** The licence's text, and the notices that go with it. */
  readonly text: string;
}

/** Files of a package that hold its terms. */
const TERMS = /^(licen[cs]e|copying|notice)([.-].*)?$/i;

/** Reads the terms of the package in a folder. @throws BuildError where they are not allowed, or have no text */
export function packageLicence(folder: string): PackageLicence {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const licence = typeof license === "string" ? license : "";
  if (!isAllowed(licence))
    throw new BuildError(say.licencesRefused({ name, version, licence, allowed: ALLOWED_LICENCES.join(", ") }));
  const texts = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && TERMS.test(entry.name))
    .map((entry) => readFileSync(join(folder, entry.name), "utf8").replaceAll("\r\n", "\n").trim())
    .filter((text) => text !== "");
  if (texts.length === 0) throw new BuildError(say.licencesNoText({ name, version }));
  return { name, version, licence, text: texts.join("\n\n") };
}

import { basename, extname } from "node:path";
import { intro } from "@clack/prompts";
import { type Answers, type PictureAnswer, USUAL_BOOK } from "../../core/beginning/answers.ts";
import { capital, slugOf, titleOf } from "../../core/beginning/kit-names.ts";
import { isAddressName } from "../../input/files/address-name.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { askBook, askLight, askPicture, askText } from "./ask.ts";
import type { Said } from "./flags.ts";

/**
 * Completes what was said of a new kit: what is missing is asked for where somebody is there, and elsewhere has its usual answer.
 * @throws BuildError where there is no picture to begin with, or she gives up
 */
export async function completeAnswers(said: Said, isAsked: boolean): Promise<Answers> {
  if (isAsked && !said.picture) intro(say.newAskIntro());
  const picture = said.picture ?? (isAsked ? await askPicture() : noPicture());
  const asks = isAsked && !said.picture;
  const name = said.slug === undefined ? nameOf(picture) : titleOf(said.slug);
  const title = said.title ?? (asks ? await askText(say.newAskTitle(), name) : name);
  const slug = said.slug ?? (asks ? await askText(say.newAskSlug(), slugOf(title), checkSlug) : slugOf(title));
  checkSlug(slug);
  return {
    slug,
    title,
    picture,
    book: said.book ?? (asks ? await askBook() : USUAL_BOOK),
    light: said.light ?? (asks ? await askLight() : undefined),
    units: said.units ?? "mm",
    draft: said.draft ?? false,
  };
}

function noPicture(): never {
  throw new BuildError(say.newNoPicture());
}

/** What a picture may be called at first. */
function nameOf(picture: PictureAnswer): string {
  if (picture.from === "word") return picture.text.replaceAll(/\\n|\s+/g, " ").trim();
  if (picture.from === "outline") return capital(say.newOutlineName({ outline: picture.name }));
  if (picture.from === "icon") return titleOf(picture.name);
  const file = picture.from === "bytes" ? picture.name : picture.path;
  return titleOf(basename(file, extname(file)));
}

/** @throws BuildError for a folder that may not be called so */
export function checkSlug(slug: string): void {
  if (!isAddressName(slug)) throw new BuildError(say.newFolderName({ given: slug.slice(0, 80) }));
}

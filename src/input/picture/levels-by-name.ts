import type { Level } from "../../core/kit/kit.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import { foldName } from "../svg/calling.ts";
import type { PictureNote, SvgPicture } from "../svg/svg-picture.ts";
import type { Source } from "./asked.ts";
import { foundIn, foundText } from "./found-in.ts";
import type { Selector } from "./selection.ts";

/** Selections that nobody stated, and what is told of them. */
interface ByName {
  readonly selections: Readonly<Record<string, readonly Selector[]>>;
  readonly notes: readonly PictureNote[];
}

/**
 * Selections by what drawing and front matter call alike, capitals aside: names, ids and classes that are names of levels.
 *
 * @throws ProblemError with what the drawing offers, where no level is called like anything in it
 */
export function levelsByName(picture: SvgPicture, levels: readonly Level[], source: Source): ByName {
  const found = foundIn(picture);
  const called = levels.flatMap(({ name }): [string, readonly Selector[]][] => {
    const selectors = found
      .filter(({ kind, value }) => kind !== "fill" && kind !== "stroke" && isAlike(value, name))
      .map(({ kind, value }) => ({ id: `#${value}`, class: `.${value}` })[kind as string] ?? value);
    return selectors.length === 0 ? [] : [[name, selectors]];
  });
  if (called.length === 0) {
    const offers = foundText(found);
    throw problem([...source.at, "levels"], {
      given: say.checkNotGiven(),
      allowed: offers === "" ? say.selectNothing() : say.selectOffers({ found: offers }),
      remedy: say.selectState(),
    });
  }
  const message = say.selectByName({ levels: listText(called.map(([name]) => `“${name}”`)) });
  return { selections: Object.fromEntries(called), notes: [{ line: 1, message }] };
}

function isAlike(value: string, level: string): boolean {
  return foldName(value).toLowerCase() === foldName(level).toLowerCase();
}

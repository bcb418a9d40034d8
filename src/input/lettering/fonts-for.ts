import { extname } from "node:path";
import * as say from "../../words/messages.ts";
import { FONT_ENDINGS, fontOfKit, type KitFolder } from "../files/named-files.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { nameList } from "../files/short.ts";
import type { OwnFont } from "../fonts/own-fonts.ts";
import { PROJECT_FAMILIES, projectFamily, projectFonts } from "./project-fonts.ts";
import type { WordFields } from "./schema.ts";
import { siteFonts } from "./site-fonts.ts";
import { openTypeface, type Typeface } from "./typeface.ts";

/** Where the words stand in the front matter of which kit. */
export interface WordsPlace {
  readonly at: FieldPath;
  readonly kit: KitFolder;
  /** Fonts of the site that may be named. */
  readonly fonts: readonly OwnFont[];
}

/** What is taken where nothing is stated: bold enough to be cut. */
const USUAL = { family: "literata", weight: 600 } as const;

/** The fonts that words are set in, asked in order. @throws ProblemError where a font is none of the project's, of the site's or of the kit's files */
export function fontsFor(
  { font = USUAL.family, weight }: WordFields,
  { at, kit, fonts }: WordsPlace,
): Iterable<Typeface> {
  const family = projectFamily(font);
  if (family !== undefined) return projectFonts(family, weight ?? USUAL.weight);
  const ofSite = siteFonts(font, weight ?? USUAL.weight, { base: kit.base, fonts });
  if (ofSite.length > 0) return ofSite;
  const field = [...at, "font"];
  const families = nameList([...PROJECT_FAMILIES, ...new Set(fonts.map(({ name }) => name))]);
  if (!FONT_ENDINGS.includes(extname(font).toLowerCase())) {
    const advice = { given: say.lettersNoFont({ font }), allowed: say.lettersFonts({ families }) };
    throw problem(field, { ...advice, remedy: say.lettersNameFont() });
  }
  const opened = openTypeface(fontOfKit(kit, font, field), weight ?? USUAL.weight);
  if (!opened) {
    const advice = { given: say.lettersBrokenFont({ font }), allowed: say.lettersFonts({ families }) };
    throw problem(field, { ...advice, remedy: say.lettersOtherFont() });
  }
  const [least, most] = opened.weights;
  if (weight === undefined || least < most) return [opened];
  const advice = { given: say.checkGiven({ value: String(weight) }), allowed: say.lettersOneWeight({ font }) };
  throw problem([...at, "weight"], { ...advice, remedy: say.lettersNoWeight() });
}

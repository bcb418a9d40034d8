import { z } from "zod";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import { choice, described, leftOut, number, reference } from "../files/schema-fields.ts";

/** Letters of a line, and lines: what is larger can be read on no book. */
const MOST_LETTERS = 120;
const MOST_LINES = 12;

const aboutText = (): string => say.lettersText({ lines: String(MOST_LINES), most: String(MOST_LETTERS) });

const line = z
  .string()
  .max(MOST_LETTERS)
  .meta(described(() => say.lettersLine({ most: String(MOST_LETTERS) })));

/** Words of a picture, and how they are set. */
export const wordFields = {
  text: z
    .union([
      z
        .string()
        .min(1)
        .max(MOST_LETTERS * MOST_LINES),
      z.array(line).min(1).max(MOST_LINES),
    ])
    .meta(described(aboutText))
    .register(FACTS, { about: aboutText })
    .optional(),
  font: leftOut(reference(say.lettersFont), say.lettersFontUsual),
  weight: leftOut(number(say.lettersWeight, 1, 1000), say.lettersWeightUsual),
  align: leftOut(choice(say.lettersAlign, ["left", "centre", "right"]), say.lettersAlignUsual),
  lineHeight: leftOut(number(say.lettersLineHeight, 0.4, 5), say.lettersLineHeightUsual),
  spacing: leftOut(number(say.lettersSpacing, -0.5, 3), say.lettersSpacingUsual),
  arc: leftOut(
    number(say.lettersArc, -360, 360).register(FACTS, { about: say.lettersArc, measure: "degrees" }),
    say.lettersArcUsual,
  ),
};

const style = z.strictObject(wordFields);

/** How words are set. */
export type WordFields = Omit<z.output<typeof style>, "text">;

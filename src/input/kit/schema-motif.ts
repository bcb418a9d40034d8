import { z } from "zod";
import { BOUNDS } from "../../core/kit/bounds.ts";
import type { WindowLength } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import {
  type About,
  choice,
  count,
  described,
  leftOut,
  length,
  number,
  reference,
  words,
} from "../files/schema-fields.ts";
import { TEXT } from "../files/text-bounds.ts";
import { pieces, sourceFields } from "../layers/schema.ts";
import { CARD_NAMES } from "./card-names.ts";

/** A colour that has no name of the program's own. */
const ownColour = z.strictObject({
  colour: words(say.fieldCardColour, TEXT.name),
  name: words(say.fieldCardName, TEXT.name),
});

/** The colour of a piece of card: one of some names, or any colour as style sheets write it, with what people call it. */
export const cardField = (about: About) =>
  z
    .union([z.enum(CARD_NAMES), ownColour])
    .meta(described(() => say.fieldCard({ about: about(), names: CARD_NAMES.join(", ") })))
    .register(FACTS, { about });

/** How far from a side of the frame, or how wide: a length, or a share of the frame. */
function windowLength(about: About, bounds: typeof BOUNDS.motifPlace | typeof BOUNDS.motifSide) {
  const mm = length(about, bounds).transform((value): WindowLength => ({ mm: value }));
  const share = z
    .string()
    .regex(bounds.least > 0 ? /^[1-9]\d{0,2}(\.\d+)?\s*%$/ : /^-?\d{1,3}(\.\d+)?\s*%$/)
    .transform((text): WindowLength => ({ share: Number.parseFloat(text) / 100 }));
  return z
    .union([share, mm])
    .meta(described(() => say.fieldWindowLength({ about: about(), help: say.fieldLengthHelp() })))
    .register(FACTS, { about });
}

/** A silhouette on the window. */
export const motifSchema = z
  .strictObject({
    motif: reference(say.fieldMotifShelf).optional(),
    ...sourceFields,
    file: reference(say.fieldMotifFile).optional(),
    name: leftOut(words(say.fieldMotifName, TEXT.name), say.fieldMotifNameUsual),
    at: leftOut(
      z
        .tuple([
          windowLength(say.fieldMotifAcross, BOUNDS.motifPlace),
          windowLength(say.fieldMotifDown, BOUNDS.motifPlace),
        ])
        .meta(described(say.fieldMotifAt)),
      say.fieldMotifAtUsual,
    ),
    width: leftOut(windowLength(say.fieldMotifWidth, BOUNDS.motifSide), say.fieldMotifSizeUsual),
    height: leftOut(windowLength(say.fieldMotifHeight, BOUNDS.motifSide), say.fieldMotifSizeUsual),
    spacer: leftOut(count(say.fieldMotifSpacers, BOUNDS.spacers), say.fieldMotifSpacersUsual),
    card: leftOut(cardField(say.fieldMotifCard), say.fieldCardUsual),
    covers: choice(say.fieldMotifCovers, ["light"]).optional(),
    turn: number(say.fieldMotifTurn, -360, 360).default(0),
    mirror: z.boolean().default(false).meta(described(say.fieldMotifMirror)),
    join: pieces(say.fieldMotifJoin),
    cut: pieces(say.fieldMotifCut),
  })
  .meta(described(say.fieldMotif));

/** A motif as its author states it. */
export type StatedMotif = z.output<typeof motifSchema>;

/** The colour of card as its author states it. */
export type StatedCard = z.output<ReturnType<typeof cardField>>;

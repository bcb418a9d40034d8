/// <reference path="../svg/colorjs.d.ts" />
import Color from "colorjs.io/dist/color.js";
import type { Card } from "../../core/window/card.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { shortValue } from "../files/short.ts";
import { cardWord, namedColour } from "./card-names.ts";
import type { StatedCard } from "./schema-motif.ts";

/** The card that is stated at a field, with its colour for screens. @throws ProblemError where its colour is none */
export function resolveCard(stated: StatedCard | undefined, at: FieldPath): Card | undefined {
  if (stated === undefined) return undefined;
  if (typeof stated === "string") return { name: cardWord(stated), colour: namedColour(stated) };
  return { name: stated.name, colour: screenColour(stated.colour, [...at, "colour"]) };
}

function screenColour(text: string, at: FieldPath): string {
  try {
    const colour = new Color(text).to("srgb").toGamut();
    colour.alpha = 1;
    const hex = colour.toString({ format: "hex", collapse: false });
    if (/^#[0-9a-f]{6}$/.test(hex)) return hex;
  } catch {
    // What the library cannot read is told below.
  }
  const given = say.frontGivenText({ value: shortValue(text) });
  throw problem(at, { given, allowed: say.motifColourAllowed(), remedy: say.motifColourRemedy() });
}

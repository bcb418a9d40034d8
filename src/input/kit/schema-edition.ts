import { z } from "zod";
import * as say from "../../words/messages.ts";
import { address, described, reference, words } from "../files/schema-fields.ts";
import { TEXT } from "../files/text-bounds.ts";

/** Whose picture it is. */
export const creditSchema = z
  .strictObject({
    work: words(say.fieldCreditWork, TEXT.title),
    licence: words(say.fieldCreditLicence, TEXT.name),
    source: words(say.fieldCreditSource, TEXT.note),
    url: z
      .url({ protocol: /^https?$/ })
      .max(TEXT.address)
      .optional()
      .meta(described(say.fieldCreditUrl)),
  })
  .meta(described(say.fieldCredit));

/** What others may do with the kit. */
export const licenceSchema = z
  .strictObject({ name: words(say.fieldLicenceName, TEXT.name), url: address(say.fieldLicenceUrl).optional() })
  .meta(described(say.fieldLicence));

/** A link of the author's own. */
export const linkSchema = z
  .strictObject({ label: words(say.fieldLinkLabel, TEXT.line, "page"), url: address(say.fieldLinkUrl) })
  .meta(described(say.fieldLink));

/** A version that was published. */
export const versionSchema = z
  .strictObject({
    version: z
      .string()
      .regex(/^[0-9A-Za-z][0-9A-Za-z.+-]*$/)
      .max(TEXT.version)
      .meta(described(say.fieldVersionName)),
    date: z.iso.date().meta(described(say.fieldVersionDate)),
    note: words(say.fieldVersionNote, TEXT.note, "page").optional(),
  })
  .meta(described(say.fieldVersion));

/** A photo of the piece. */
export const photoSchema = z
  .strictObject({ file: reference(say.fieldPhotoFile), alt: words(say.fieldPhotoAlt, TEXT.note, "page") })
  .meta(described(say.fieldPhoto));

import { z } from "zod";
import * as say from "../../words/messages.ts";
import { address, described, words } from "../files/schema-fields.ts";

/** Whose picture it is. */
export const creditSchema = z
  .strictObject({
    work: words(say.fieldCreditWork),
    licence: words(say.fieldCreditLicence),
    source: words(say.fieldCreditSource),
    url: z
      .url({ protocol: /^https?$/ })
      .optional()
      .meta(described(say.fieldCreditUrl)),
  })
  .meta(described(say.fieldCredit));

/** What others may do with the kit. */
export const licenceSchema = z
  .strictObject({ name: words(say.fieldLicenceName), url: address(say.fieldLicenceUrl).optional() })
  .meta(described(say.fieldLicence));

/** A link of the author's own. */
export const linkSchema = z
  .strictObject({ label: words(say.fieldLinkLabel), url: address(say.fieldLinkUrl) })
  .meta(described(say.fieldLink));

/** A version that was published. */
export const versionSchema = z
  .strictObject({
    version: z
      .string()
      .regex(/^[0-9A-Za-z][0-9A-Za-z.+-]*$/)
      .meta(described(say.fieldVersionName)),
    date: z.iso.date().meta(described(say.fieldVersionDate)),
    note: words(say.fieldVersionNote).optional(),
  })
  .meta(described(say.fieldVersion));

/** A photo of the piece. */
export const photoSchema = z
  .strictObject({ file: words(say.fieldPhotoFile), alt: words(say.fieldPhotoAlt) })
  .meta(described(say.fieldPhoto));

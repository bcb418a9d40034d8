import { PDFDict, type PDFDocument, PDFHexString, PDFName, PDFString } from "@cantoo/pdf-lib";
import { PACKET_ORIGIN } from "./wall.ts";

/** What a link of a printed page may lead to. */
const PUBLIC = /^(https?|mailto):/i;

/**
 * Links to the site's own pages carry the place where they were printed: they are given the site's address, or, where it has
 * none, lead nowhere, as do links that are no public addresses.
 */
export function mendLinks(pdf: PDFDocument, address: string | undefined): void {
  for (const [, value] of pdf.context.enumerateIndirectObjects()) {
    if (!(value instanceof PDFDict) || value.get(PDFName.of("Subtype")) !== PDFName.of("Link")) continue;
    const action = value.lookupMaybe(PDFName.of("A"), PDFDict);
    const uri = action?.lookupMaybe(PDFName.of("URI"), PDFString, PDFHexString);
    if (!action || !uri) continue;
    const target = publicTarget(uri.asString(), address);
    if (target === undefined) value.delete(PDFName.of("A"));
    else if (target !== uri.asString()) action.set(PDFName.of("URI"), PDFString.of(target));
  }
}

function publicTarget(uri: string, address: string | undefined): string | undefined {
  if (!uri.startsWith(PACKET_ORIGIN)) return PUBLIC.test(uri) ? uri : undefined;
  return address === undefined ? undefined : new URL(`.${uri.slice(PACKET_ORIGIN.length)}`, address).href;
}

import { PDFDict, PDFHexString, PDFName, PDFRef, PDFString } from "@cantoo/pdf-lib";
import { parseDict } from "./parse-dict.ts";
import type { PdfFile } from "./pdf-file.ts";
import { PACKET_ORIGIN } from "./wall.ts";

/** What a link of a printed page may lead to. */
const PUBLIC = /^(https?|mailto):/i;

const LINK = /\/Subtype\s*\/Link\b/;

/**
 * Links to the site's own pages carry the place where they were printed: they are given the site's address, or, where it has
 * none, lead nowhere, as do links that are no public addresses.
 */
export function mendLinks(file: PdfFile, address: string | undefined): void {
  for (const [number, text] of file.objects)
    if (typeof text === "string" && LINK.test(text)) file.objects.set(number, mended(text, file, address));
}

function mended(text: string, { objects }: PdfFile, address: string | undefined): string {
  const link = parseDict(text);
  const stated = link.get(PDFName.of("A"));
  const action = stated instanceof PDFRef ? parseDict(String(objects.get(stated.objectNumber))) : stated;
  if (!(action instanceof PDFDict)) return text;
  const uri = action.lookupMaybe(PDFName.of("URI"), PDFString, PDFHexString)?.asString();
  if (uri === undefined) return text;
  const target = publicTarget(uri, address);
  if (target === uri) return text;
  if (target === undefined) link.delete(PDFName.of("A"));
  else {
    action.set(PDFName.of("URI"), PDFString.of(target));
    link.set(PDFName.of("A"), action);
  }
  return link.toString();
}

function publicTarget(uri: string, address: string | undefined): string | undefined {
  if (!uri.startsWith(PACKET_ORIGIN)) return PUBLIC.test(uri) ? uri : undefined;
  return address === undefined ? undefined : new URL(`.${uri.slice(PACKET_ORIGIN.length)}`, address).href;
}

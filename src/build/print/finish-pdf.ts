import { PDFContext, PDFDict, PDFDocument, PDFHexString, PDFName, PDFString } from "@cantoo/pdf-lib";
import { language } from "../../words/language.ts";
import { renumberElements } from "./element-names.ts";
import { mendLinks } from "./links.ts";
import { parseDict } from "./parse-dict.ts";
import { type PdfFile, readPdf } from "./pdf-file.ts";
import { writePdf } from "./write-pdf.ts";

/** The date in every packet, so that the same kit prints the same bytes. */
const FIXED_DATE = new Date("2000-01-01T00:00:00Z");

/**
 * Viewers start printing at actual size, show the title, and the file is dated the same whenever it is made. Links to other
 * pages lead to the site's `address`, where it has one.
 */
export async function finishPdf(raw: Uint8Array, title: string, address?: string): Promise<Uint8Array> {
  const file = readPdf(raw) ?? readPdf(await rewritten(raw));
  if (!file) throw new Error("a PDF without a table of its objects");
  file.objects.set(file.info, infoOf(title));
  tellViewers(file);
  mendLinks(file, address);
  renumberElements(file);
  return await writePdf(file);
}

/** The same PDF with a plain table. */
async function rewritten(raw: Uint8Array): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(raw, { updateMetadata: false });
  pdf.setProducer("Leaflight");
  return pdf.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false });
}

function infoOf(title: string): string {
  const date = PDFString.fromDate(FIXED_DATE);
  const made = PDFHexString.fromText("Leaflight");
  const info = {
    Title: PDFHexString.fromText(title),
    Creator: made,
    Producer: made,
    CreationDate: date,
    ModDate: date,
  };
  return PDFContext.create().obj(info).toString();
}

function tellViewers({ objects, root }: PdfFile): void {
  const catalog = parseDict(String(objects.get(root)));
  const preferences = catalog.lookupMaybe(PDFName.of("ViewerPreferences"), PDFDict) ?? catalog.context.obj({});
  preferences.set(PDFName.of("DisplayDocTitle"), catalog.context.obj(true));
  preferences.set(PDFName.of("PrintScaling"), PDFName.of("None"));
  catalog.set(PDFName.of("ViewerPreferences"), preferences);
  catalog.set(PDFName.of("Lang"), PDFString.of(language()));
  catalog.delete(PDFName.of("Metadata"));
  objects.set(root, catalog.toString());
}

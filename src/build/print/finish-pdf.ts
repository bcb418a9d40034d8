import { PDFArray, PDFDict, PDFDocument, PDFName, type PDFObject, PDFString } from "@cantoo/pdf-lib";
import { language } from "../../words/language.ts";
import { mendLinks } from "./links.ts";

/** The date in every packet, so that the same kit prints the same bytes. */
const FIXED_DATE = new Date("2000-01-01T00:00:00Z");

/**
 * Viewers start printing at actual size, show the title, and the file is dated the same whenever it is made. Links to other
 * pages lead to the site's `address`, where it has one.
 */
export async function finishPdf(raw: Uint8Array, title: string, address?: string): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(raw, { updateMetadata: false });
  pdf.setTitle(title, { showInWindowTitleBar: true });
  pdf.setLanguage(language());
  pdf.setCreator("Leaflight");
  pdf.setProducer("Leaflight");
  pdf.setCreationDate(FIXED_DATE);
  pdf.setModificationDate(FIXED_DATE);
  pdf.catalog
    .getOrCreateViewerPreferences()
    .setPrintScaling(
      "None" as Parameters<ReturnType<typeof pdf.catalog.getOrCreateViewerPreferences>["setPrintScaling"]>[0],
    );
  pdf.catalog.delete(PDFName.of("Metadata"));
  mendLinks(pdf, address);
  renumberElements(pdf);
  return pdf.save({ useObjectStreams: true, addDefaultPage: false, updateFieldAppearances: false });
}

/** Chromium's names of tagged elements differ from run to run: they are counted anew in their own order. */
function renumberElements(pdf: PDFDocument): void {
  const names = new Set<string>();
  eachElementName(pdf, (name) => {
    names.add(name);
    return name;
  });
  // By number: as text, node100 would come before node99, and where the digits grow differs from run to run.
  const counted = [...names].sort((a, b) => Number(a.slice(4)) - Number(b.slice(4)));
  const ranks = new Map(counted.map((name, i) => [name, `node${String(i + 1).padStart(8, "0")}`]));
  eachElementName(pdf, (name) => ranks.get(name)!);
}

function eachElementName(pdf: PDFDocument, rename: (name: string) => string): void {
  const visit = (value: PDFObject): PDFObject => {
    if (value instanceof PDFString && /^node\d+$/.test(value.asString())) return PDFString.of(rename(value.asString()));
    if (value instanceof PDFArray) for (let i = 0; i < value.size(); i += 1) value.set(i, visit(value.get(i)));
    if (value instanceof PDFDict) for (const [key, one] of value.entries()) value.set(key, visit(one));
    return value;
  };
  for (const [, value] of pdf.context.enumerateIndirectObjects()) visit(value);
}

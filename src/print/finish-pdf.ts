import { PDFDocument, PDFName } from "@cantoo/pdf-lib";

/** The date in every packet, so that the same kit prints the same bytes. */
const FIXED_DATE = new Date("2000-01-01T00:00:00Z");

/** Viewers start printing at actual size, show the title, and the file is dated the same whenever it is made. */
export async function finishPdf(raw: Uint8Array, title: string): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(raw, { updateMetadata: false });
  pdf.setTitle(title, { showInWindowTitleBar: true });
  pdf.setLanguage("en");
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
  return pdf.save({ useObjectStreams: true, addDefaultPage: false, updateFieldAppearances: false });
}

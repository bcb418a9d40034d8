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

/** Chromium's names of tagged elements differ from run to run, and so does their order: they are counted anew as they come in the file. */
function renumberElements(pdf: PDFDocument): void {
  const names = new Set<string>();
  eachElementName(pdf, (name) => {
    names.add(name);
    return name;
  });
  const ranks = new Map([...names].map((name, i) => [name, `node${String(i + 1).padStart(8, "0")}`]));
  eachElementName(pdf, (name) => ranks.get(name)!);
  const tree = pdf.catalog
    .lookupMaybe(PDFName.of("StructTreeRoot"), PDFDict)
    ?.lookupMaybe(PDFName.of("IDTree"), PDFDict);
  if (tree) sortTree(tree);
}

/** Brings a name tree (ISO 32000 7.9.6) into the order of its names, which its readers rely on; each leaf keeps its size. */
function sortTree(tree: PDFDict): void {
  const leaves = leavesOf(tree).map((leaf) => ({ leaf, names: leaf.lookup(PDFName.of("Names"), PDFArray) }));
  const pairs = leaves
    .flatMap(({ names }) =>
      Array.from(
        { length: names.size() / 2 },
        (_, i) => [names.lookup(2 * i, PDFString), names.get(2 * i + 1)] as const,
      ),
    )
    .sort(([one], [other]) => (one.asString() < other.asString() ? -1 : 1));
  for (const { leaf, names } of leaves) {
    const own = pairs.splice(0, names.size() / 2);
    for (const [i, [name, element]] of own.entries()) {
      names.set(2 * i, name);
      names.set(2 * i + 1, element);
    }
    const limits = leaf.lookupMaybe(PDFName.of("Limits"), PDFArray);
    limits?.set(0, own[0]![0]);
    limits?.set(1, own.at(-1)![0]);
  }
}

/** Chromium's tree has one level of leaves below its root, or is a leaf. */
function leavesOf(tree: PDFDict): PDFDict[] {
  const kids = tree.lookupMaybe(PDFName.of("Kids"), PDFArray);
  return kids ? Array.from({ length: kids.size() }, (_, i) => leavesOf(kids.lookup(i, PDFDict))).flat() : [tree];
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

import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRef, PDFString } from "@cantoo/pdf-lib";
import { describe, expect, it } from "vitest";
import { finishPdf } from "../../../src/build/print/finish-pdf.ts";
import { PACKET_ORIGIN } from "../../../src/build/print/wall.ts";

/** A PDF of these objects, the first its catalog and the second what tells about it, with a plain table (ISO 32000 7.5.4). */
function plainPdf(...objects: readonly string[]): Uint8Array {
  let text = "%PDF-1.4\n";
  const places: number[] = [];
  for (const [i, body] of objects.entries()) {
    places.push(text.length);
    text += `${i + 1} 0 obj\n${body}\nendobj\n`;
  }
  const entries = places.map((place) => `${String(place).padStart(10, "0")} 00000 n \n`).join("");
  const size = objects.length + 1;
  const table = `xref\n0 ${size}\n0000000000 65535 f \n${entries}`;
  return Buffer.from(
    `${text}${table}trailer\n<</Size ${size}\n/Root 1 0 R\n/Info 2 0 R>>\nstartxref\n${text.length}\n%%EOF\n`,
    "latin1",
  );
}

const CATALOG =
  "<</Type /Catalog\n/Pages 3 0 R\n/StructTreeRoot 6 0 R\n/ViewerPreferences <</Type /ViewerPreferences>>\n/Lang (de)>>";
const PAGE = "<</Type /Page\n/Parent 3 0 R\n/MediaBox [0 0 100 200]\n/Contents 5 0 R\n/Annots [12 0 R 13 0 R 14 0 R]>>";
/** What a stream holds is not looked at, names and ends of objects included. */
const CONTENT = "BT (node00000009) Tj endobj ET";

const link = (uri: string): string => `<</Type /Annot\n/Subtype /Link\n/A <</S /URI\n/URI (${uri})>>>>`;

/** Three elements with names as one run of Chromium gives them; their tree has two leaves. */
const raw = plainPdf(
  CATALOG,
  "<</Title (first)\n/CreationDate (D:20260101000000+00'00')>>",
  "<</Type /Pages\n/Kids [4 0 R]\n/Count 1>>",
  PAGE,
  `<</Length ${CONTENT.length}>> stream\n${CONTENT}\nendstream`,
  "<</Type /StructTreeRoot\n/K [7 0 R 8 0 R 9 0 R]\n/IDTree 15 0 R>>",
  "<</Type /StructElem\n/S /TH\n/P 6 0 R\n/ID (node00000300)>>",
  "<</Type /StructElem\n/S /TH\n/P 6 0 R\n/ID (node00000200)>>",
  "<</Type /StructElem\n/S /TD\n/P 6 0 R\n/ID (node00000100)\n/A [<</O /Table\n/Headers [(node00000200) (node00000300)]>>]\n/Alt (a \\(node00000100\\))>>",
  "<</Limits [(node00000100) (node00000200)]\n/Names [(node00000100) 9 0 R (node00000200) 8 0 R]>>",
  "<</Limits [(node00000300) (node00000300)]\n/Names [(node00000300) 7 0 R]>>",
  link(`${PACKET_ORIGIN}/kits/b/index.html`),
  link("file:///etc/hosts"),
  link("https://host.example/\\(c\\)"),
  "<</Kids [10 0 R 11 0 R]>>",
);

async function read(bytes: Uint8Array) {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  const at = (number: number): PDFDict => pdf.context.lookup(PDFRef.of(number), PDFDict);
  const names = (number: number): string[] =>
    at(number)
      .lookup(PDFName.of("Names"), PDFArray)
      .asArray()
      .map((one) => (one instanceof PDFString ? one.asString() : String(one)));
  const uri = (number: number): string | undefined =>
    at(number).lookupMaybe(PDFName.of("A"), PDFDict)?.lookup(PDFName.of("URI"), PDFString).asString();
  return { pdf, at, names, uri };
}

describe("finishPdf", () => {
  it("tells viewers the title, the language and to print at actual size, and is of a fixed day", async () => {
    const { pdf } = await read(await finishPdf(raw, "Boat: pa\u010dket"));
    expect([pdf.getTitle(), pdf.getCreator(), pdf.getProducer()]).toEqual([
      "Boat: pa\u010dket",
      "Leaflight",
      "Leaflight",
    ]);
    expect([pdf.getCreationDate(), pdf.getModificationDate()]).toEqual(Array(2).fill(new Date("2000-01-01T00:00:00Z")));
    const preferences = pdf.catalog.getViewerPreferences()!;
    expect([preferences.getDisplayDocTitle(), preferences.getPrintScaling()]).toEqual([true, "None"]);
    expect(pdf.catalog.lookup(PDFName.of("Lang"), PDFString).asString()).toBe("en");
    expect(pdf.getPageCount()).toBe(1);
  });

  it("counts the names of elements as they come, wherever they stand, and keeps their tree in order", async () => {
    const { at, names } = await read(await finishPdf(raw, "t"));
    const id = (number: number): string => at(number).lookup(PDFName.of("ID"), PDFString).asString();
    expect([7, 8, 9].map(id)).toEqual(["node00000001", "node00000002", "node00000003"]);
    expect(at(9).get(PDFName.of("A"))!.toString()).toMatch(/\[ \(node00000002\) \(node00000001\) \]/);
    expect(at(9).lookup(PDFName.of("Alt"), PDFString).asString()).toBe("a \\(node00000100\\)");
    expect([names(10), names(11)]).toEqual([
      ["node00000001", "7 0 R", "node00000002", "8 0 R"],
      ["node00000003", "9 0 R"],
    ]);
    expect(at(10).get(PDFName.of("Limits"))!.toString()).toBe("[ (node00000001) (node00000002) ]");
  });

  it("leads links to the site's address, or nowhere, and leaves others as they are", async () => {
    const here = await read(await finishPdf(raw, "t", "https://folds.example.org/quay/"));
    expect([12, 13, 14].map(here.uri)).toEqual([
      "https://folds.example.org/quay/kits/b/index.html",
      undefined,
      "https://host.example/\\(c\\)",
    ]);
    const nowhere = await read(await finishPdf(raw, "t"));
    expect(nowhere.uri(12)).toBeUndefined();
  });

  it("keeps streams as they are", async () => {
    const finished = Buffer.from(await finishPdf(raw, "t")).toString("latin1");
    expect(finished).toContain(`stream\n${CONTENT}\nendstream`);
  });

  it("gives the same of a file that is written with packed objects", async () => {
    const packed = await (await PDFDocument.load(raw, { updateMetadata: false })).save({ useObjectStreams: true });
    expect(Buffer.from(packed).toString("latin1")).not.toContain("\nxref");
    const { names, uri } = await read(await finishPdf(packed, "t", "https://folds.example.org/"));
    expect(names(11)).toEqual(["node00000003", "9 0 R"]);
    expect(uri(12)).toBe("https://folds.example.org/kits/b/index.html");
  });

  it("fails at what is no PDF, or is cut off", async () => {
    await expect(finishPdf(Buffer.from("no PDF"), "t")).rejects.toBeInstanceOf(Error);
    await expect(finishPdf(raw.subarray(0, 400), "t")).rejects.toBeInstanceOf(Error);
  });
});

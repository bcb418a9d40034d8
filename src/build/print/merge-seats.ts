import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PDFDocument } from "@cantoo/pdf-lib";
import type { KitClass } from "../../core/class/kit-class.ts";
import { privateFolder } from "../../output/private-folder.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import * as say from "../../words/messages.ts";
import { KeptFiles } from "../kept/kept-files.ts";
import { usedPackage } from "../kept/used-package.ts";
import { finishPdf } from "./finish-pdf.ts";

const CACHE = ".cache/merged";

/** A seat's packet: its file, and how many sheets to cut out come last in it. */
interface SeatPacket {
  readonly bytes: Buffer;
  readonly cutOut: number;
}

/** A file of all seats' packets: which pages of each it takes, and whether each seat begins on a front side. */
interface Merged {
  readonly name: "all-seats" | "to-read" | "to-cut-out";
  readonly title: (class_: { readonly title: string }) => string;
  readonly from: (pages: number, cutOut: number) => number;
  readonly until: (pages: number, cutOut: number) => number;
  readonly bothSides: boolean;
}

const MERGED: readonly Merged[] = [
  { name: "all-seats", title: say.printAllSeats, from: () => 0, until: (pages) => pages, bothSides: true },
  { name: "to-read", title: say.printToRead, from: () => 0, until: (pages, cut) => pages - cut, bothSides: true },
  {
    name: "to-cut-out",
    title: say.printToCutOut,
    from: (pages, cut) => pages - cut,
    until: (pages) => pages,
    bothSides: false,
  },
];

/**
 * All seats' packets in seat order, where any seat has one: whole, what is read, and what is cut out of card. What is printed on both
 * sides begins on a front side for each seat. A file is kept under the hash of the packets that it is made from.
 */
export async function mergeSeats(output: string, view: ClassView): Promise<void> {
  const packets = packetsOf(output, view);
  if (packets.length === 0) return;
  const kept = new KeptFiles(CACHE, "pdf");
  const loaded = new Loaded(packets);
  for (const merged of MERGED) {
    if (merged.name === "to-cut-out" && packets.every(({ cutOut }) => cutOut === 0)) continue;
    const title = merged.title({ title: view.plan.title });
    const key = keyOf(merged.name, title, packets);
    let pdf = kept.take(key);
    if (!pdf) {
      pdf = Buffer.from(await finishPdf(await merge(merged, await loaded.all()), title));
      kept.put(key, pdf);
    }
    writeFileSync(join(output, privateFolder(view.slug), `${merged.name}-${view.plan.paper}.pdf`), pdf);
  }
  kept.close();
}

function packetsOf(output: string, { slug, seats, plan }: ClassView): SeatPacket[] {
  return seats.flatMap(({ number, view }) => {
    if (!view) return [];
    const folder = join(output, "classes", slug, `seat-${number}`);
    const bytes = readFileSync(join(folder, `packet-${plan.paper}.pdf`));
    return [{ bytes, cutOut: cutOutSheets(readFileSync(join(folder, "packet/index.html"), "utf8"), plan) }];
  });
}

/** Sheets to cut out that a packet's page has; the class's edition may leave the strips out. */
function cutOutSheets(html: string, { packet }: KitClass): number {
  const sheets = html.match(/<section class="sheet true-scale"[^>]*>/g) ?? [];
  return sheets.filter((sheet) => packet !== "bench" || !sheet.includes('data-sheet="strips"')).length;
}

/** What merges files: the package and this room. */
function keyOf(name: string, title: string, packets: readonly SeatPacket[]): string {
  const hash = createHash("sha256").update(JSON.stringify([usedPackage("@cantoo/pdf-lib").version, name, title]));
  for (const file of readdirSync(import.meta.dirname).sort())
    hash.update(readFileSync(join(import.meta.dirname, file)));
  for (const { bytes, cutOut } of packets)
    hash.update(createHash("sha256").update(bytes).update(String(cutOut)).digest());
  return KeptFiles.key(hash);
}

interface LoadedPacket {
  readonly pdf: PDFDocument;
  readonly cutOut: number;
}

/** Packets read as PDF once, when they are needed. */
class Loaded {
  readonly #packets: readonly SeatPacket[];
  #loaded: Promise<LoadedPacket[]> | undefined;

  constructor(packets: readonly SeatPacket[]) {
    this.#packets = packets;
  }

  all(): Promise<LoadedPacket[]> {
    this.#loaded ??= Promise.all(
      this.#packets.map(async ({ bytes, cutOut }) => ({ pdf: await PDFDocument.load(bytes), cutOut })),
    );
    return this.#loaded;
  }
}

async function merge({ from, until, bothSides }: Merged, packets: readonly LoadedPacket[]): Promise<Uint8Array> {
  const merged = await PDFDocument.create();
  for (const { pdf, cutOut } of packets) {
    const all = pdf.getPageIndices();
    const pages = await merged.copyPages(pdf, all.slice(from(all.length, cutOut), until(all.length, cutOut)));
    for (const page of pages) merged.addPage(page);
    if (!bothSides || pages.length % 2 === 0) continue;
    const { width, height } = pages[0]!.getSize();
    merged.addPage([width, height]);
  }
  return await merged.save({ useObjectStreams: false, addDefaultPage: false });
}

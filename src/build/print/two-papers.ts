import { inflateSync } from "node:zlib";
import { MM_PER_INCH, tidy } from "../../core/units/length.ts";
import { type Paper, pageMargins } from "../../output/views/paper.ts";
import { partFooters } from "./part-footers.ts";
import { NewStream, type PdfFile, type PdfObject, readPdf } from "./pdf-file.ts";

const POINTS_PER_MM = 72 / MM_PER_INCH;
/** Chromium's page boxes are whole multiples of this, points. */
const BOX_STEP = 0.24;

const PAGE = /^<<\/Type \/Page\b/;
const CONTENTS = /\/Contents (\d+) 0 R/;
const MEDIA_BOX = /\/MediaBox \[[^\]]*\]/;
/** Where texts name places on a page: destinations, and lists of points. */
const PLACES = /(\/XYZ) (\S+) (\S+)|(\/(?:Rect|BBox|QuadPoints) ?\[)([^\]]*)/g;

/** A way on the page, points. */
interface Way {
  readonly x: number;
  readonly y: number;
}

/**
 * What was printed on one paper, with another paper's footer at the head, as the files of both: the content box is the same, so
 * for the other paper all is moved. Undefined where the pages are not written as this can tell.
 */
export function partPapers(raw: Uint8Array, from: Paper, to: Paper): readonly [PdfFile, PdfFile] | undefined {
  const file = readPdf(raw);
  // A pattern lies by the page, not by what is drawn with it.
  if (!file || [...file.objects.values()].some(holdsPattern)) return undefined;
  const way = wayBetween(from, to);
  const [own, other] = [copyOf(file), copyOf(file)];
  let next = Math.max(...file.objects.keys()) + 1;
  for (const [number, text] of file.objects) {
    if (typeof text !== "string") continue;
    other.objects.set(number, moved(text, way));
    if (!PAGE.test(text)) continue;
    const contents = Number(CONTENTS.exec(text)?.[1]);
    const parted = partFooters(unpacked(file.objects.get(contents)), from, way);
    if (!parted) return undefined;
    const page = text.replace(CONTENTS, `/Contents [${next} 0 R ${contents} 0 R]`);
    own.objects.set(number, page);
    other.objects.set(number, page.replace(MEDIA_BOX, `/MediaBox [0 0 ${boxSide(to.width)} ${boxSide(to.height)}]`));
    const rest = new NewStream(parted.rest);
    for (const { objects } of [own, other]) objects.set(contents, rest);
    own.objects.set(next, new NewStream(Buffer.from(parted.own, "latin1")));
    other.objects.set(next, new NewStream(Buffer.from(parted.other, "latin1")));
    next += 1;
  }
  return [own, other];
}

/** From the content box on one paper to that on another; heights are counted from the foot of a page. */
function wayBetween(from: Paper, to: Paper): Way {
  const [[fromHead, fromSide], [toHead, toSide]] = [pageMargins(from), pageMargins(to)];
  const up = to.height - toHead - (from.height - fromHead);
  return { x: (toSide - fromSide) * POINTS_PER_MM, y: up * POINTS_PER_MM };
}

function boxSide(mm: number): number {
  return tidy(Math.round((mm * POINTS_PER_MM) / BOX_STEP) * BOX_STEP, 2);
}

function copyOf(file: PdfFile): PdfFile {
  return { ...file, objects: new Map(file.objects) };
}

function holdsPattern(object: PdfObject): boolean {
  if (object instanceof NewStream) return false;
  return object.includes("/PatternType");
}

function moved(text: string, { x, y }: Way): string {
  return text.replace(PLACES, (_, xyz, left, top, list, points) => {
    if (xyz) return `${xyz} ${tidy(Number(left) + x, 3)} ${tidy(Number(top) + y, 3)}`;
    const numbers = (points as string).trim().split(/\s+/).map(Number);
    return `${list}${numbers.map((one, i) => tidy(one + (i % 2 === 0 ? x : y), 3)).join(" ")}`;
  });
}

/** What a packed stream holds; nothing where it is packed in another way. */
function unpacked(stream: PdfObject | undefined): Buffer {
  if (!Buffer.isBuffer(stream)) return Buffer.alloc(0);
  const [head, keys] = /^\s*<<([^>]*)>>\s*stream\r?\n/.exec(stream.toString("latin1", 0, 400)) ?? [];
  if (!head || !/^\/Filter \/FlateDecode\s*\/Length \d+\s*$/.test(keys!.trim())) return Buffer.alloc(0);
  return inflateSync(stream.subarray(head.length, head.length + Number(/\d+/.exec(keys!)![0])));
}

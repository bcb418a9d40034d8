import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { DOMParser } from "@xmldom/xmldom";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Page } from "puppeteer";
import { type PageText, pageTexts } from "./page-texts.ts";
import { unmarked } from "./unmarked.ts";

/** What stands unmarked among texts, each with its place and the text around it; every fault once. */
export function faultsIn(texts: readonly PageText[], names: readonly RegExp[] = []): string[] {
  return [
    ...new Set(
      texts.flatMap(({ where, text }) =>
        unmarked(text, names).map((word) => `${word} | ${where} | ${text.trim().slice(0, 160)}`),
      ),
    ),
  ];
}

/** What stands unmarked on a page as it is now, shown or not. */
export async function pageFaults(page: Page, place: string): Promise<string[]> {
  return faultsIn(await page.evaluate(pageTexts)).map((fault) => `${place}: ${fault}`);
}

/** Files of a built site that end so, sorted. */
export function filesOf(dist: string, ending: string): string[] {
  return readdirSync(dist, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(ending))
    .sort();
}

/** Texts in the elements of an XML file that a person reads. */
export function xmlTexts(dist: string, file: string, elements: readonly string[]): PageText[] {
  const document = new DOMParser().parseFromString(readFileSync(join(dist, file), "utf8"), "text/xml");
  return elements.flatMap((name) =>
    [...document.getElementsByTagName(name)].map((one) => ({ where: `${file} ${name}`, text: one.textContent ?? "" })),
  );
}

/** Keys of JSON data whose texts are read by a person: of schema.org's vocabulary, and of a web manifest. */
const SAID =
  /^(?:name|short_name|description|text|creditText|unitText|yield|headline|alternateName|title|caption|abstract)$/;

/** Texts of JSON data that a person reads. */
export function jsonTexts(value: unknown, where: string): PageText[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) =>
    typeof one === "string"
      ? SAID.test(key)
        ? [{ where: `${where}.${key}`, text: one }]
        : []
      : jsonTexts(one, `${where}.${key}`),
  );
}

/** The texts of a PDF: its pages' with head and foot, as one, for a phrase may run over a page's end; its bookmarks and its title. */
export async function pdfTexts(dist: string, file: string): Promise<PageText[]> {
  const task = getDocument({ data: new Uint8Array(readFileSync(join(dist, file))), verbosity: 0 });
  const document = await task.promise;
  let pages = "";
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    pages += ` ${items.map((item) => ("str" in item ? item.str + (item.hasEOL ? " " : "") : "")).join("")}`;
  }
  const titles = (marks: Awaited<ReturnType<typeof document.getOutline>> | null): string[] =>
    (marks ?? []).flatMap(({ title, items }) => [title, ...titles(items)]);
  const { info } = await document.getMetadata();
  const { Title } = info as { readonly Title?: string };
  const texts = [{ where: file, text: pages }];
  for (const text of [Title ?? "", ...titles(await document.getOutline())])
    texts.push({ where: `${file} title`, text });
  await task.destroy();
  return texts;
}

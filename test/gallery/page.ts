import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type ExportedDrawer, exportedDrawers } from "./drawers.ts";
import { type Compared, isChanged } from "./golden.ts";
import { pathOf } from "./scene.ts";

const ROOT = join(import.meta.dirname, "../..");
const MM_PER_PIXEL = 25.4 / 96;

/** One page with every drawing by room, those that changed first; needs nothing beside it. */
export function galleryPage(all: readonly Compared[]): string {
  const drawers = new Map(exportedDrawers().map((one) => [one.name, one]));
  const changed = all.filter(isChanged);
  const rooms = Map.groupBy(all, ({ scene }) => scene.room);
  const sections = [...rooms].map(([room, own]) => section(room, own, drawers, ""));
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Gallery of drawings</title>
<style>${fonts()}${readFileSync(join(import.meta.dirname, "page.css"), "utf8")}</style>
</head>
<body>
<header>
<h1>Gallery</h1>
<p>${all.length} drawings, ${changed.length} changed.</p>
<label>Only names with <input type="search" id="filter" placeholder="door, tall, front/…"></label>
<nav>${changed.length > 0 ? '<a href="#changed">changed</a>' : ""}${[...rooms.keys()].map((room) => `<a href="#${room}">${room}</a>`).join("")}</nav>
</header>
<main>
${changed.length > 0 ? section("changed", changed, drawers, "changed-") : ""}
${sections.join("\n")}
</main>
<script>${readFileSync(join(import.meta.dirname, "page-filter.js"), "utf8")}</script>
</body>
</html>
`;
}

type Drawers = ReadonlyMap<string, ExportedDrawer>;

function section(title: string, all: readonly Compared[], drawers: Drawers, prefix: string): string {
  return `<section id="${title}"><h2>${title}</h2>\n${all.map((one) => entry(one, drawers, prefix)).join("\n")}</section>`;
}

function entry(one: Compared, drawers: Drawers, prefix: string): string {
  const { scene, now, golden } = one;
  const path = pathOf(scene);
  const [width, height] = sizeOf(now);
  const drawn = prefix !== "" && golden !== undefined ? pair(golden, now, path) : drawing(now);
  return `<article id="${prefix}${path.replace("/", "-")}" data-name="${path}">
<h3>${path}</h3>
<p><code>${scene.of.name}</code> in <code>${drawers.get(scene.of.name)?.file}</code>, ${Math.round(width)} × ${Math.round(height)} mm${stateOf(one)}</p>
${drawn}
</article>`;
}

function stateOf({ now, golden }: Compared): string {
  if (golden === undefined) return ", <strong>new</strong>";
  return now === golden ? "" : ", <strong>changed</strong>";
}

/** As accepted and as it is drawn now, beside each other or upon each other: what is black then is alike. */
function pair(golden: string, now: string, path: string): string {
  const name = `how-${path}`;
  const ways = ["beside each other", "difference"].map(
    (way, i) => `<label><input type="radio" name="${name}" value="${i}"${i === 0 ? " checked" : ""}> ${way}</label>`,
  );
  return `<fieldset class="ways">${ways.join("")}</fieldset>
<div class="pair"><figure>${drawing(golden)}<figcaption>accepted</figcaption></figure><figure>${drawing(now)}<figcaption>now</figcaption></figure></div>`;
}

/** A drawing with ids and styles of its own. */
function drawing(svg: string): string {
  const [width, height] = sizeOf(svg);
  const fit = "<style>svg{display:block;width:100%;height:auto}</style>";
  return `<div class="drawing" style="width:${width}mm;aspect-ratio:${width}/${height}"><template shadowrootmode="open">${fit}${svg}</template></div>`;
}

/** Width and height of a drawing, mm; numbers without a unit are CSS pixels. */
export function sizeOf(svg: string): [width: number, height: number] {
  const side = (name: string): number => {
    const [, value, unit] = new RegExp(`^<svg[^>]* ${name}="([\\d.]+)(mm)?"`).exec(svg)!;
    return Number(value) * (unit ? 1 : MM_PER_PIXEL);
  };
  return [side("width"), side("height")];
}

function fonts(): string {
  return [400, 600, 700]
    .map((weight) => {
      const file = `node_modules/@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`;
      const data = readFileSync(join(ROOT, file)).toString("base64");
      return `@font-face{font-family:"Source Sans 3";font-weight:${weight};src:url(data:font/woff2;base64,${data})}\n`;
    })
    .join("");
}

import { closingOf } from "../../core/pattern/corner-pattern.ts";
import * as say from "../../words/messages.ts";
import { paperLabel } from "../../words/papers.ts";
import { unitName } from "../../words/units.ts";
import type { AnyKitView } from "../views/any-kit-view.ts";
import type { Edition } from "../views/edition.ts";
import { PAPERS } from "../views/paper.ts";
import { figuresPart } from "./figures.ts";
import { type Html, html, type Markup, raw, rich } from "./markup.ts";
import { roundPart } from "./round.ts";

/** The head of a kit's page: its picture, its figures, and what can be printed. `kept` is told of the kit's own book alone. */
export function heroPart(view: AnyKitView, { current }: Edition, kept?: Markup): Html {
  const { kit } = view;
  return html`<section class="hero">
<div class="hero-picture">
<img class="day" src="front.svg" alt="${say.kitFrontAlt({ title: kit.title })}">
${moods(view)}
<div id="round" class="round" data-round>${roundPart(view)}</div>
</div>
<div class="hero-text">
<h1 dir="auto">${kit.title}</h1>
<p class="lede" dir="auto">${kit.summary}</p>
${currentVersion(current)}
<fieldset class="units"><legend>${say.kitUnits()}</legend>
${(["mm", "in"] as const).map(
  (units) =>
    html`<label><input type="radio" name="units" id="units-${units}" value="${units}"${kit.units === units && raw(" checked")}> ${unitName(units)}</label>
`,
)}</fieldset>
<div data-part="figures">${figuresPart(view)}</div>
${downloads(kept)}
</div>
</section>`;
}

function moods({ kit, pattern }: AnyKitView): Markup {
  return (
    closingOf(pattern).pocket &&
    html`<img class="lit" src="front-lit.svg" alt="${say.kitLitAlt({ title: kit.title })}" loading="lazy">
<fieldset class="moods"><legend class="sr">${say.kitMoods()}</legend><label><input type="radio" name="mood" id="mood-day" checked> ${say.kitMoodDay()}</label> <label><input type="radio" name="mood" id="mood-lit"> ${say.kitMoodLit()}</label></fieldset>`
  );
}

function currentVersion(current: Edition["current"]): Markup {
  if (!current) return false;
  const words = rich(say.kitVersionOf, {
    version: html`<a href="#versions">${say.kitVersion({ version: current.version })}</a>`,
    day: html`<time datetime="${current.date}">${current.day}</time>`,
  });
  return html`<p class="edition">${words}</p>`;
}

/** Another edition, on both papers. */
function others(file: string, named: (args: { paper: string }) => string): Html {
  return html`<p><a href="${file}-a4.pdf">${named({ paper: say.paperA4() })}</a> · <a href="${file}-letter.pdf">${say.paperLetterShort()}</a></p>`;
}

/** Pages by which a piece is made. */
function working(): Html {
  return html`<a class="button" href="make/index.html" data-to="make/index.html">${say.kitMake()}</a>
<a class="button plain-button" href="bench/index.html" data-to="bench/index.html">${say.kitWorkAlong()}</a>`;
}

function downloads(kept?: Markup): Html {
  const packets = PAPERS.map(
    ({ name }, i) =>
      html`${i > 0 && " "}<a class="button plain-button" href="packet-${name}.pdf">${say.kitPacketOn({ paper: paperLabel(name) })}</a>`,
  );
  return html`<div class="downloads">
<p class="held-note" data-held hidden>${say.kitHeld()}</p>
${working()}
<div data-own-packets>${kept}${packets}</div>
<div data-my-packet hidden><a class="button" href="packet/index.html" data-to="packet/index.html">${say.kitMyPacket()}</a> <a href="packet/large.html" data-to="packet/large.html">${say.kitMyLarge()}</a></div>
<details class="more"><summary>${say.kitMoreFiles()}</summary>
<div data-own-packets>${others("packet-bench", say.kitBenchOn)}
${others("table-large", say.kitLargeOn)}
${others("table-compact", say.kitCompactOn)}</div>
<p><a href="pattern.csv">CSV</a> · <a href="pattern.json">JSON</a></p></details>
</div>`;
}

import { closingOf } from "../../core/pattern/corner-pattern.ts";
import * as say from "../../words/messages.ts";
import type { AnyKitView } from "../views/any-kit-view.ts";
import { type Edition, editionOf } from "../views/edition.ts";
import { kitPart } from "./any-kit-parts.ts";
import { chapter } from "./chapter.ts";
import { creditsPart, versionsPart } from "./edition.ts";
import type { Chapter } from "./gists.ts";
import { heroPart } from "./hero.ts";
import type { KitPart } from "./kit-parts.ts";
import { type Html, html, type Markup } from "./markup.ts";
import { photosPart } from "./photos.ts";
import { refitForm } from "./refit.ts";

/**
 * The main part of a kit's page: what a reader chooses by, and closed below it what she works by. `story` is what the kit's
 * author tells; around it may stand more.
 */
export function kitPage(view: AnyKitView, story: Html, { kept, started, told }: AroundStory = {}): Html {
  const edition = editionOf(view.kit);
  return html`<main id="main" class="wrap kit${view.way === "corner" && " by-corners"}">
${started}
${heroPart(view, edition, kept)}

${contents(view, edition)}

${filled(view, "warnings")}
<section id="book"><h2>${say.kitBook()}</h2>
${filled(view, "book")}${refitForm(view)}
</section>

<section id="takes"><h2>${say.kitTakes()}</h2>
${filled(view, "takes")}
<p><a href="#supplies">${say.kitTakesAll()}</a></p>
</section>

<div class="telling prose">${
    view.way === "cut" &&
    html`<p class="note corners-only">${say.kitStoryOfCut()}</p>
`
  }${story}
${creditsPart(view.kit, edition)}
</div>

${photosPart(view.kit)}

<section id="care"><h2>${say.kitCare()}</h2>
${filled(view, "care")}
<p><a href="#cautions">${say.kitCareAll()}</a></p>
</section>

<div class="chapters">
${CHAPTERS.map(({ id, heading, name }) => html`${id === "steps" && told}${chapter(view, id, heading(), name)}`)}</div>
${versionsPart(edition)}
<p class="printed">${say.kitPrinted()}</p>
</main>`;
}

/** What else a kit's page may show, as markup. */
interface AroundStory {
  /** How much of each level is seen. */
  readonly kept?: Markup;
  /** Where a reader's pieces stand. */
  readonly started?: Markup;
  /** What programs are told of the work: near the steps that it repeats, so that a page on the line says them once. */
  readonly told?: Markup;
}

/** A part that the page's script fills again for a reader's book. */
function filled(view: AnyKitView, name: KitPart): Html {
  return html`<div data-part="${name}">${kitPart(view, name)}</div>`;
}

/** What stands closed, in the order of the work; of light and window nothing is in it where the kit has none. */
const CHAPTERS: readonly {
  readonly id: string;
  readonly name: Chapter;
  readonly heading: () => string;
  readonly short?: () => string;
}[] = [
  { id: "cautions", name: "cautions", heading: say.kitCautions },
  { id: "supplies", name: "supplies", heading: say.kitSupplies, short: say.kitSuppliesShort },
  { id: "prepare", name: "preparation", heading: say.kitPrepare },
  { id: "steps", name: "steps", heading: say.kitSteps },
  { id: "pattern", name: "pattern", heading: say.kitTable },
  { id: "tacks", name: "tacks", heading: say.kitTacks, short: say.kitTacksShort },
  { id: "window", name: "window", heading: say.kitWindow },
];

/** Where corners are folded, no link leads to the tacks: the page's style takes it away, as its script may change the way. */
function contents({ pattern }: AnyKitView, { versions }: Edition): Html {
  const { pocket, window } = closingOf(pattern);
  const there = CHAPTERS.filter(({ name }) => name !== "window" || pocket || window);
  const sections = [
    ["book", say.kitBook()],
    ...there.map(({ id, heading, short = heading }) => [id, short()]),
    ...(versions.length > 0 ? [["versions", say.kitVersions()]] : []),
  ];
  const links = sections.map(([id, name]) => html`<a href="#${id}">${name}</a>`);
  return html`<nav class="contents" aria-label="${say.kitContents()}">${links}</nav>`;
}

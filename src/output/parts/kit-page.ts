import * as say from "../../words/messages.ts";
import { type Edition, editionOf } from "../views/edition.ts";
import type { KitView } from "../views/kit-view.ts";
import { creditsPart, versionsPart } from "./edition.ts";
import { heroPart } from "./hero.ts";
import { KIT_PARTS, type KitPart } from "./kit-parts.ts";
import { type Html, html, type Markup } from "./markup.ts";
import { photosPart } from "./photos.ts";
import { refitForm } from "./refit.ts";
import { roundPart } from "./round.ts";

/** The main part of a kit's page. `story` is what the kit's author tells, `kept` how much of each level is seen, `started` where a reader's pieces stand, as markup. */
export function kitPage(view: KitView, story: Html, kept?: Markup, started?: Markup): Html {
  const edition = editionOf(view.kit);
  const section = (id: string, heading: string, name: KitPart, more?: Markup): Html => html`
<section id="${id}"><h2>${heading}</h2>
${filled(view, name)}${more}
</section>
`;
  return html`<main id="main" class="wrap kit">
${started}
${heroPart(view, edition, kept)}

${contents(view, edition)}

<div class="telling prose">${story}
${creditsPart(view.kit, edition)}
</div>

${photosPart(view.kit)}

<section id="round" class="round" data-round>${roundPart(view)}</section>

${filled(view, "warnings")}
${section("book", say.kitBook(), "book", refitForm(view))}
${section("cautions", say.kitCautions(), "cautions")}
${section("supplies", say.kitSupplies(), "supplies")}
${section("prepare", say.kitPrepare(), "preparation")}
<div id="window" class="part">${filled(view, "window")}</div>
${section("steps", say.kitSteps(), "steps")}
${section("pattern", say.kitTable(), "pattern")}
${section("tacks", say.kitTacks(), "tacks")}
${versionsPart(edition)}
</main>`;
}

/** A part that the page's script fills again for a reader's book. */
function filled(view: KitView, name: KitPart): Html {
  return html`<div data-part="${name}">${KIT_PARTS[name](view)}</div>`;
}

function contents({ pattern: { pocket, window } }: KitView, { versions }: Edition): Html {
  const sections = [
    ["round", say.kitRound()],
    ["book", say.kitBook()],
    ["cautions", say.kitCautions()],
    ["supplies", say.kitSuppliesShort()],
    ["prepare", say.kitPrepare()],
    ...(pocket || window ? [["window", say.kitWindow()]] : []),
    ["steps", say.kitSteps()],
    ["pattern", say.kitTable()],
    ["tacks", say.kitTacksShort()],
    ...(versions.length > 0 ? [["versions", say.kitVersions()]] : []),
  ];
  const links = sections.map(([id, name]) => html`<a href="#${id}">${name}</a>`);
  return html`<nav class="contents" aria-label="${say.kitContents()}">${links}</nav>`;
}

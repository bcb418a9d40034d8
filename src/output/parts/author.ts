import type { Assessment } from "../../core/makeability/assessment.ts";
import type { Makeability, TroubleWithWays } from "../../core/makeability/makeability.ts";
import { isSlight } from "../../core/makeability/trouble.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { shareText, troubleText, wayTexts } from "../../words/findings/makeability.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { fixed } from "../../words/numbers.ts";
import { makeabilityFigure } from "../drawing/front/makeability.ts";
import { markSwatch } from "../drawing/front/trouble-marks.ts";
import type { KitView, KitViewBase } from "../views/kit-view.ts";
import type { LinkTo } from "./cards.ts";
import { type Html, html, type Markup, raw } from "./markup.ts";

/** Where an author's pages stand while the site is served. */
export const AUTHOR = "/author/index.html";

/** The address of a kit's page for its author. */
export function authorAddress(slug: string): string {
  return `/author/${slug}/index.html`;
}

/**
 * The main part of a kit's page for its author: the picture with what is hard to make or to see, what would help, what each
 * level keeps, and in `found` everything else that is known of the kit, in sentences.
 */
export function authorPage({ kit }: KitView, made: Makeability, found: readonly string[], link: LinkTo): Html {
  const figure = makeabilityFigure(kit, made);
  return html`<main id="main" class="wrap author">
${authorHead(kit, link(`/kits/${kit.slug}/index.html`), link)}
<div class="author-pair">
<figure>${raw(figure.svg)}<figcaption>${figure.label}</figcaption></figure>
<section aria-labelledby="troubles"><h2 id="troubles">${say.makeableTroubles()}</h2>
${troubleList(kit, made)}</section>
</div>
<section aria-labelledby="kept"><h2 id="kept">${say.makeableLevels()}</h2>
<p>${made.seen ? say.makeableLevelsNote() : say.makeableLevelsAlong()}</p>
${levelTable(kit, made)}</section>
${foundList(found)}
</main>`;
}

function authorHead({ title }: KitViewBase["kit"], page: string, link: LinkTo): Html {
  return html`<section class="intro"><h1>${say.makeableTitle({ title })}</h1><p class="lede">${say.makeableLede()}</p>
<p class="downloads"><a href="${page}">${say.makeableToKit()}</a> <a href="${link(AUTHOR)}">${say.makeableToIndex()}</a></p></section>`;
}

function foundList(found: readonly string[]): Html {
  return html`<section aria-labelledby="found"><h2 id="found">${say.makeableFound()}</h2>
${found.length === 0 ? html`<p>${say.makeableFoundNothing()}</p>` : html`<ul class="prose">${found.map((one) => html`<li>${one}</li>`)}</ul>`}</section>`;
}

/** The same of a kit whose corners are folded: what is seen of its outline stands in `seen`. */
export function cornerAuthorPage(
  { kit }: Pick<KitViewBase, "kit">,
  seen: Markup,
  found: readonly string[],
  link: LinkTo,
): Html {
  const page = link(`/kits/${kit.slug}/index.html`);
  const front = link(`/kits/${kit.slug}/front.svg`);
  return html`<main id="main" class="wrap author">
${authorHead(kit, page, link)}
<figure><img src="${front}" alt="${say.kitFrontAlt({ title: kit.title })}"></figure>
${seen}
${foundList(found)}
</main>`;
}

/** The main part of the list of all kits for their authors. */
export function authorIndex(
  kits: readonly { readonly kit: Pick<KitView["kit"], "slug" | "title">; readonly troubles: number }[],
  link: LinkTo,
): Html {
  const items = kits.map(
    ({ kit: { slug, title }, troubles }) =>
      html`<li><a href="${link(authorAddress(slug))}" dir="auto">${title}</a><p>${say.makeableIndexCount({ troubles })}</p></li>
`,
  );
  return html`<main id="main" class="wrap"><section class="intro"><h1>${say.makeableIndexTitle()}</h1><p class="lede">${say.makeableLede()}</p></section>
<ul class="guide-list">${items}</ul></main>`;
}

function troubleList(kit: KitView["kit"], made: Makeability): Html {
  if (made.troubles.length === 0) return html`<p>${say.makeableAllWell()}</p>`;
  return html`<ol class="troubles">${made.troubles.map((one) => troubleItem(kit, made, one))}</ol>`;
}

function troubleItem(kit: KitView["kit"], made: Makeability, { trouble, ways }: TroubleWithWays): Html {
  const texts = wayTexts(trouble, ways, kit);
  const helps: Markup =
    texts.length === 0
      ? html`<p class="note">${isSlight(trouble) ? say.makeableSlight() : say.makeableNoWay()}</p>`
      : html`<p class="note">${say.makeableWays()}</p><ul>${texts.map((text) => html`<li>${text}</li>`)}</ul>`;
  return html`<li>${raw(markSwatch(trouble.kind))}<p>${troubleText(trouble, made, kit)}</p>${helps}</li>
`;
}

function levelTable({ levels, units }: KitView["kit"], { areas, seen, reach }: Assessment): Html {
  const shares = [
    ["kept", say.makeableColumnKept()],
    ["hidden", say.makeableColumnHidden()],
    ["unreached", say.makeableColumnUnreached()],
    ["changed", say.makeableColumnChanged()],
  ] as const;
  const heads = [
    say.makeableColumnLevel(),
    say.makeableColumnArea(),
    ...(seen ? shares.map(([, head]) => head) : []),
    say.makeableColumnGutter(),
  ];
  const rows = levels.map(({ name }, k) => {
    const one = seen?.levels[k];
    const cells = [
      areaText(areas[k]!, units),
      ...(one ? shares.map(([key]) => shareText(one.wanted === 0 ? 0 : one[key] / one.wanted)) : []),
      formatSize(reach[k]!.gutterRoom, units),
    ];
    return html`<tr><th scope="row">${name}</th>${cells.map((cell, i) => html`<td data-label="${heads[i + 1]!}">${cell}</td>`)}</tr>
`;
  });
  return html`<table class="plain"><thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table>`;
}

function areaText(mm2: number, units: KitView["kit"]["units"]): string {
  const area = units === "mm" ? mm2 / 100 : mm2 / MM_PER_INCH ** 2;
  return say.makeableArea({ area: fixed(area, 1), unit: units });
}

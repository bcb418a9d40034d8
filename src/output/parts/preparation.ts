import * as say from "../../words/messages.ts";
import type { CornerView } from "../views/corner-view.ts";
import type { KitView } from "../views/kit-view.ts";
import type { Preparation } from "../views/preparation.ts";
import { type Html, html, type Markup, rich } from "./markup.ts";

/** How the book is made ready: where the pages are, what is scored, and the packing for each batch. */
export function preparationPart(view: Pick<KitView, "preparation">): Html {
  return bookMadeReady(view, batches(view.preparation));
}

/** The same; in the packet each batch says its packing itself. */
export function bookMadeReady({ preparation }: Pick<KitView, "preparation">, packing?: Html): Html {
  return html`${places(preparation)}
<div class="beside">${offsets(preparation)}
${borders(preparation, say.preparationBorders())}</div>
${scoring(preparation)}
<p class="note">${say.preparationScoringNote()}</p>
${packing}
<p class="note">${rich(say.preparationCaliper, { thickness: preparation.caliper })}</p>`;
}

/** The same where corners are folded: nothing is pressed beforehand, and the leaf need not lie level. `batched` lists the batches, too. */
export function bookMadeReadyForCorners(
  { preparation, kit }: Pick<CornerView, "preparation" | "kit">,
  batched: boolean,
): Html {
  const caption = say.cornerPreparationBorders({ empty: kit.fit.corner.empty });
  return html`${places(preparation)}
<div class="beside">${offsets(preparation)}
${borders(preparation, caption)}</div>
${batched && plainBatches(preparation)}
<p class="note">${rich(say.preparationCaliper, { thickness: preparation.caliper })}</p>`;
}

function places({ firstLeaf, lastLeaf, lastPatternPage }: Preparation): Html {
  const words = rich(say.preparationPlaces, {
    first: html`<strong>${firstLeaf}</strong>`,
    last: html`<strong>${lastLeaf}</strong>`,
    page: lastPatternPage,
  });
  return html`<p class="key">${words}</p>`;
}

function offsets({ offsets }: Preparation): Html {
  const rows = offsets.map(({ leaves, text }) => html`<tr><th scope="row">${leaves}</th><td>${text}</td></tr>`);
  return table(say.preparationPages(), [say.preparationPictureLeaves(), say.preparationRelation()], rows);
}

function borders({ borders }: Preparation, caption: string): Markup {
  if (borders.length === 0) return false;
  const rows = borders.map(
    ({ leaves, count }) =>
      html`<tr><th scope="row">${leaves}</th><td data-label="${say.preparationCount()}">${count}</td></tr>`,
  );
  return table(caption, [say.preparationLeaves(), say.preparationCount()], rows);
}

function scoring({ scoring }: Preparation): Html {
  const heads = [
    say.preparationLine(),
    say.preparationDepth(),
    say.preparationLevel(),
    say.preparationLeaves(),
    say.preparationCount(),
  ];
  const rows = scoring.map(
    ({ line, depth, name, runs, leaves }) =>
      html`<tr><th scope="row" data-label="${say.preparationLine()}">${line ?? say.preparationLineFree()}</th><td data-label="${say.preparationDepth()}">${depth}</td><td class="named" data-label="${say.preparationLevel()}">${name}</td><td>${runs.join("; ")}</td><td data-label="${say.preparationCount()}">${leaves}</td></tr>`,
  );
  return table(say.preparationScoring(), heads, rows);
}

function batches({ batches, piece }: Preparation): Html {
  const heads = [
    say.preparationBatch(),
    say.preparationFrom(),
    say.preparationTo(),
    say.preparationLeaves(),
    say.preparationPacking(),
    ...(piece ? [rich(say.preparationPiecesOf, { size: piece })] : []),
  ];
  const rows = batches.map(
    ({ number, from, to, count, packing, pieces }) =>
      html`<tr><th scope="row" data-label="${say.preparationBatch()}">${number}</th><td data-label="${say.preparationFrom()}">${from}</td><td data-label="${say.preparationTo()}">${to}</td><td data-label="${say.preparationLeaves()}">${count}</td><td data-label="${say.preparationPacking()}">${packing}</td>${
        piece && html`<td data-label="${say.preparationPieces()}">${pieces}</td>`
      }</tr>`,
  );
  return table(say.preparationBatches(), heads, rows);
}

function plainBatches({ batches }: Preparation): Html {
  const heads = [say.preparationBatch(), say.preparationFrom(), say.preparationTo(), say.preparationLeaves()];
  const rows = batches.map(
    ({ number, from, to, count }) =>
      html`<tr><th scope="row" data-label="${say.preparationBatch()}">${number}</th><td data-label="${say.preparationFrom()}">${from}</td><td data-label="${say.preparationTo()}">${to}</td><td data-label="${say.preparationLeaves()}">${count}</td></tr>`,
  );
  return table(say.cornerPreparationBatches(), heads, rows);
}

function table(caption: string, heads: readonly Markup[], rows: readonly Html[]): Html {
  const columns = heads.map((head) => html`<th scope="col">${head}</th>`);
  return html`<table class="plain"><caption>${caption}</caption><thead><tr>${columns}</tr></thead><tbody>${rows}</tbody></table>`;
}

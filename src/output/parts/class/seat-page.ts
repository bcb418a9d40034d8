import { closingOf } from "../../../core/pattern/corner-pattern.ts";
import { partsOf } from "../../../core/window/window.ts";
import * as say from "../../../words/messages.ts";
import { paperLabel } from "../../../words/papers.ts";
import { partName } from "../../../words/parts.ts";
import type { AnyPrintedKit } from "../../views/any-kit-view.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { MisfitView, OtherKit } from "../../views/class/misfit-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { type Html, html, type Markup, rich } from "../markup.ts";

/** The page of one seat of a class. */
export function seatPage(seat: SeatView, view: ClassView): Html {
  const { kitSlug, kitTitle, number, book } = seat;
  const keeps = kitSlug !== "" && html` data-keeps="${kitSlug}"`;
  return html`<main id="main" class="wrap class-page seat-page"${keeps}>
<section class="intro">
<p class="over"><a href="../index.html" dir="auto">${view.plan.title}</a></p>
<h1>${say.seatNumber({ seat: number })}</h1>
<p class="lede">${seat.awaits ? say.seatAwaiting() : say.seatLede({ kit: kitTitle, book })}</p>
${seat.knifeFree && html`<p class="note">${say.seatFolded()}</p>`}
</section>
${seat.awaits && awaitingPart(seat, view)}
${seat.view && fittingSeat(seat, seat.view, view)}
${seat.misfit && misfitPart(seat.misfit, kitPath(seat))}
${reachesPart(seat, view)}
</main>`;
}

/** The class's page is told the seat, the kit where that is settled, and that it works without a knife. */
function awaitingPart({ number, kitSlug, knifeFree }: SeatView, { plan }: ClassView): Html {
  const asks = `seat=${number}${kitSlug === "" ? "" : `&kit=${kitSlug}`}${knifeFree ? "&way=corner" : ""}`;
  const help = {
    class: html`<a href="../index.html?${asks}" dir="auto">${plan.title}</a>`,
    card: html`<a href="../measuring-card/index.html">${say.classMeasuringCard()}</a>`,
  };
  return html`<section class="prose"><p>${rich(say.seatAwaitingHelp, help)}</p></section>`;
}

function fittingSeat(seat: SeatView, kit: AnyPrintedKit, view: ClassView): Html {
  const front = closingOf(kit.pattern).pocket ? "front-lit.svg" : "front.svg";
  return html`<section class="seat-front"><img src="${front}" alt="${say.seatFrontAlt({ kit: seat.kitTitle })}">
<div>
${figures(seat, kit)}
${links(seat, view)}
</div></section>
${doubtsPart(seat)}
${cutFiles(kit)}`;
}

function figures(
  { holdWidth, hours, knifeFree }: SeatView,
  { figures: { opening }, counts, difficulty }: AnyPrintedKit,
): Html {
  const { leaves, cuts, folds } = counts;
  return html`<dl class="figures">${figure(say.seatHoldWidth(), holdWidth, say.seatHoldWidthNote())}
${figure(say.seatOpening(), opening, say.seatOpeningNote())}
${figure(say.seatLeaves(), leaves, knifeFree ? say.seatLeavesFolded({ folds }) : say.seatLeavesNote({ cuts, folds }))}
${figure(say.seatWork(), hours, say.seatWorkNote({ difficulty }))}</dl>`;
}

function figure(name: string, value: string | number, note: string): Html {
  return html`<div><dt>${name}</dt><dd>${value}<span class="note">${note}</span></dd></div>`;
}

function links(seat: SeatView, { plan }: ClassView): Html {
  const kit = kitPath(seat);
  const { address } = seat;
  return html`<ul class="seat-do">
<li><a class="button" href="${kit}/bench/index.html${address}">${say.seatBench()}</a></li>
<li><a class="button plain-button" href="packet-${plan.paper}.pdf">${say.seatPacket({ paper: paperLabel(plan.paper) })}</a></li>
<li><a href="${kit}/index.html${address}">${say.seatPattern()}</a></li>
<li><a href="pattern.csv">${say.seatCsv()}</a> · <a href="pattern.json">JSON</a></li>
</ul>`;
}

function doubtsPart({ doubts }: SeatView): Markup {
  if (doubts.length === 0) return false;
  return html`<section class="warn panel"><h2>${say.seatDoubts()}</h2><ul>${doubts.map((doubt) => html`<li>${doubt}</li>`)}</ul></section>`;
}

function cutFiles({ pattern }: AnyPrintedKit): Markup {
  const { window } = closingOf(pattern);
  if (!window) return false;
  const parts = partsOf(window).map(
    (part) =>
      html`<li>${partName(part)}: <a href="cut/${part.id}-mm.svg">SVG</a> · <a href="cut/${part.id}-mm.dxf">DXF</a></li>`,
  );
  return html`<section><h2>${say.seatCutFiles()}</h2><ul class="columns">${parts}</ul></section>`;
}

function misfitPart({ why, offers, otherKits, spares, reader }: MisfitView, kit: string): Html {
  return html`<section class="warn panel"><h2>${say.seatMisfit()}</h2>
<p>${why}</p>
<h3>${say.seatHelp()}</h3>
<ul>${[...offers, ...spares].map(({ words, address }) => html`<li><a href="${kit}/index.html${address}">${words}</a></li>`)}
${otherKits.map((other) => html`<li>${otherKit(other)}</li>`)}
<li>${reader}</li></ul></section>`;
}

function otherKit({ title, path, change }: OtherKit): Html {
  const kit = html`<a href="../../..${path}">${title}</a>`;
  return change === undefined ? rich(say.seatOtherFits, { kit }) : rich(say.seatOtherChange, { kit, offer: change });
}

function reachesPart({ number }: SeatView, { schedule, sessions }: ClassView): Markup {
  const row = schedule.find(({ seat }) => seat === number);
  if (!row) return false;
  const reaches = row.reaches.map((reach, i) => {
    const pause = row.pauses[i]!;
    return html`<li><b>${sessions[i]!.title}</b> <span>${reach}${pause !== "" && html`<span class="note">${pause}</span>`}</span></li>`;
  });
  return html`<section><h2>${say.seatReaches()}</h2>
<ol class="reaches">${reaches}</ol>
${row.drying !== "" && html`<p>${row.drying}</p>`}</section>`;
}

/** A kit's folder as seen from a seat's. */
function kitPath({ kitSlug }: SeatView): string {
  return `../../../kits/${kitSlug}`;
}

import { isOver } from "../../../core/class/class-state.ts";
import { listText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { CALENDAR } from "../../feeds/calendar-file.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { kitCard } from "../../views/kit-card.ts";
import { kitCards, type LinkTo } from "../cards.ts";
import { cautionsPart } from "../cautions.ts";
import { finderPart } from "../finder.ts";
import { type Html, html, type Markup, rich } from "../markup.ts";
import { seatRowPart } from "./seat-row.ts";
import { suppliedNames } from "./seat-supplies.ts";
import { sessionsTable } from "./sessions.ts";

/** A class's page. `story` is the teacher's own telling. What is over asks for no book, and what is closed has no seats. */
export function classPage(view: ClassView, story: Html, link: LinkTo): Html {
  const { state } = view.plan;
  const sections = [
    ...(isOver(state) ? [] : [BRING, FITS, ROW]),
    SCHEDULE,
    ...(state === "closed" ? [] : [SEATS, CAUTIONS]),
  ];
  return html`<main id="main" class="wrap class-page">
${intro(view)}

<nav class="contents" aria-label="${say.classContents()}">${sections.map(({ id, title }) => html`<a href="#${id}">${title()}</a>`)}</nav>

<section class="telling prose">${story}</section>

${sections.map(
  ({ id, title, part }) => html`<section id="${id}"><h2>${title()}</h2>
${part(view, link)}
</section>

`,
)}
</main>`;
}

interface Section {
  readonly id: string;
  readonly title: () => string;
  readonly part: (view: ClassView, link: LinkTo) => Html;
}

const BRING: Section = { id: "bring", title: say.classBring, part: toBring };

const FITS: Section = {
  id: "fits",
  title: say.classFits,
  part: ({ plan, kits }, link) => html`<noscript><p>${say.classNoscript()}</p></noscript>
${finderPart({ kind: "class", units: plan.units })}
${kitCards(kits.map(kitCard), link)}`,
};

const ROW: Section = { id: "row", title: say.classRow, part: seatRowPart };

const SCHEDULE: Section = {
  id: "evenings",
  title: say.classSchedule,
  part: (view) => html`${sessionsTable(view)}
${!isOver(view.plan.state) && html`<p><a href="${CALENDAR}">${say.classCalendar()}</a></p>`}
${view.plan.state !== "closed" && html`<p class="note">${say.classScheduleNote()}</p>`}`,
};

const SEATS: Section = {
  id: "seats",
  title: say.classSeats,
  part: (view) => html`<ul class="seats">${view.seats.map((seat) => seatItem(seat, view))}
</ul>
<p class="note">${say.classSeatsNote()}</p>`,
};

const CAUTIONS: Section = { id: "cautions", title: say.classCautions, part: cautionsPart };

function intro({ plan, date }: ClassView): Html {
  return html`<section class="intro">
<p class="over">${say.classOver()}</p>
<h1 dir="auto">${plan.title}</h1>
${plan.summary !== "" && html`<p class="lede" dir="auto">${plan.summary}</p>`}
<p class="when">${rich(say.classWhen, { date: html`<strong>${date}</strong>`, place: plan.place })}</p>
<p class="note">${stateText(plan)}</p>
</section>`;
}

/** How far the class is, in a sentence. */
function stateText({ state, seats, awaiting }: ClassView["plan"]): string {
  return say.classState({ state, books: seats.length, seats: seats.length + awaiting.length });
}

function toBring({ plan, made }: ClassView): Html {
  const card = rich(say.classBringMeasurementsNote, {
    card: html`<a href="measuring-card/index.html">${say.classMeasuringCard()}</a>`,
    pdf: html`<a href="measuring-card.pdf">${say.classMeasuringCardPdf()}</a>`,
  });
  return html`<ul class="bring">
<li><b>${say.classBringBook()}</b><span class="note">${say.classBringBookNote()}</span></li>
<li><b>${say.classBringMeasurements()}</b><span class="note">${card}</span></li>${plan.bring.map((item) => html`<li dir="auto">${item}</li>`)}
</ul>
<h3>${say.classSupplied()}</h3>
<p dir="auto">${say.classSuppliedList({ things: listText(suppliedNames(made, plan)) })}</p>`;
}

function seatItem(seat: SeatView, { plan }: ClassView): Html {
  const page = `seat-${seat.number}/index.html`;
  return html`
<li class="seat"><h3><a href="${page}">${say.seatNumber({ seat: seat.number })}</a></h3>
<p>${seat.kitTitle}<span class="note">${seat.book}</span>${seat.knifeFree && html`<span class="note">${say.classSeatFolded()}</span>`}</p>
${seat.view ? seatLinks(seat, plan.paper) : html`<p class="note">${seat.awaits ? say.classBookToCome() : say.classSeatToCome()}</p>`}
</li>`;
}

function seatLinks({ number, kitSlug, address }: SeatView, paper: string): Markup {
  const kit = `../../kits/${kitSlug}`;
  return html`<p class="seat-links"><a href="${kit}/index.html${address}">${say.classSeatPattern()}</a> <a href="${kit}/bench/index.html${address}">${say.classSeatBench()}</a> <a href="seat-${number}/packet-${paper}.pdf">${say.classSeatPacket()}</a></p>`;
}

import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { kitCards, type LinkTo } from "../cards.ts";
import { cautionsPart } from "../cautions.ts";
import { finderPart } from "../finder.ts";
import { type Html, html, type Markup, rich } from "../markup.ts";
import { sessionsTable } from "./sessions.ts";

/** A class's page. `story` is the teacher's own telling. */
export function classPage(view: ClassView, story: Html, link: LinkTo): Html {
  return html`<main id="main" class="wrap class-page">
${intro(view)}

<nav class="contents" aria-label="${say.classContents()}"><a href="#bring">${say.classBring()}</a><a href="#fits">${say.classFits()}</a><a href="#evenings">${say.classSchedule()}</a><a href="#seats">${say.classSeats()}</a><a href="#cautions">${say.classCautions()}</a></nav>

<section class="telling prose">${story}</section>

<section id="bring"><h2>${say.classBring()}</h2>
${toBring(view)}
</section>

<section id="fits"><h2>${say.classFits()}</h2>
<noscript><p>${say.classNoscript()}</p></noscript>
${finderPart({ kind: "class", units: view.plan.units })}
${kitCards(view.kits, link)}
</section>

<section id="evenings"><h2>${say.classSchedule()}</h2>
${sessionsTable(view)}
<p class="note">${say.classScheduleNote()}</p>
</section>

<section id="seats"><h2>${say.classSeats()}</h2>
<ul class="seats">${view.seats.map((seat) => seatItem(seat, view))}
</ul>
<p class="note">${say.classSeatsNote()}</p>
</section>

<section id="cautions"><h2>${say.classCautions()}</h2>
${cautionsPart(view)}
</section>
</main>`;
}

function intro({ plan, date }: ClassView): Html {
  return html`<section class="intro">
<p class="over">${say.classOver()}</p>
<h1 dir="auto">${plan.title}</h1>
${plan.summary !== "" && html`<p class="lede" dir="auto">${plan.summary}</p>`}
<p class="when">${rich(say.classWhen, { date: html`<strong>${date}</strong>`, place: plan.place })}</p>
</section>`;
}

function toBring({ plan }: ClassView): Html {
  const card = rich(say.classBringMeasurementsNote, {
    card: html`<a href="measuring-card/index.html">${say.classMeasuringCard()}</a>`,
    pdf: html`<a href="measuring-card.pdf">${say.classMeasuringCardPdf()}</a>`,
  });
  return html`<ul class="bring">
<li><b>${say.classBringBook()}</b><span class="note">${say.classBringBookNote()}</span></li>
<li><b>${say.classBringMeasurements()}</b><span class="note">${card}</span></li>${plan.bring.map((item) => html`<li dir="auto">${item}</li>`)}
</ul>`;
}

function seatItem(seat: SeatView, { plan }: ClassView): Html {
  const page = `seat-${seat.number}/index.html`;
  return html`
<li class="seat"><h3><a href="${page}">${say.seatNumber({ seat: seat.number })}</a></h3>
<p>${seat.kitTitle}<span class="note">${seat.book}</span></p>
${seat.view ? seatLinks(seat, plan.paper) : html`<p class="note">${say.classSeatToCome()}</p>`}
</li>`;
}

function seatLinks({ number, kitSlug, address }: SeatView, paper: string): Markup {
  const kit = `../../kits/${kitSlug}`;
  return html`<p class="seat-links"><a href="${kit}/index.html${address}">${say.classSeatPattern()}</a> <a href="${kit}/bench/index.html${address}">${say.classSeatBench()}</a> <a href="seat-${number}/packet-${paper}.pdf">${say.classSeatPacket()}</a></p>`;
}

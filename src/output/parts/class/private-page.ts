import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { LinkTo } from "../cards.ts";
import { type Html, html, rich } from "../markup.ts";
import { linkRow } from "./link-row.ts";

/** The page of what is for teachers alone: each class's papers. */
export function privatePage(classes: readonly ClassView[], link: LinkTo): Html {
  return html`<main id="main" class="wrap"><section class="intro"><h1>${say.privateTitle()}</h1>
<p class="lede">${say.privateLede()}</p></section>
${classes.map((view) => papers(view, link))}
</main>`;
}

function papers({ slug, plan, date, sheets, seats }: ClassView, link: LinkTo): Html {
  const folder = `classes/${slug}`;
  const files = sheets.map(({ name }) => html`<a href="${folder}/cut/${name}-mm.svg">${name}</a>`);
  return html`<section class="prose"><h2><a href="${link(`/classes/${slug}/`)}" dir="auto">${plan.title}</a></h2>
<p>${rich(say.classWhen, { date: html`<strong>${date}</strong>`, place: plan.place })}</p>
<ul>
<li>${rich(say.privateTeacher, {
    packet: html`<a href="${folder}/teacher.pdf">${say.classTeacherPacket()}</a>`,
    read: html`<a href="${folder}/teacher/index.html">${say.classTeacherRead()}</a>`,
  })}</li>
<li><a href="${folder}/room/index.html">${say.roomLink()}</a></li>
${seats.some(({ view }) => view) && html`<li><a href="${folder}/all-seats-${plan.paper}.pdf">${say.classAllPackets()}</a></li>`}
${files.length > 0 && html`<li>${rich(say.classCutFiles, { files: linkRow(files) })}</li>`}
</ul></section>
`;
}

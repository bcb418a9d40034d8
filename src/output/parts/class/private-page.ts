import * as say from "../../../words/messages.ts";
import type { ClassCard } from "../../views/class/class-card.ts";
import type { LinkTo } from "../cards.ts";
import { type Html, html, rich } from "../markup.ts";
import { linkRow } from "./link-row.ts";
import { CUT_SHEETS } from "./print-plan-page.ts";

/** The page of what is for teachers alone: each class's papers. */
export function privatePage(classes: readonly ClassCard[], link: LinkTo): Html {
  return html`<main id="main" class="wrap"><section class="intro"><h1>${say.privateTitle()}</h1>
<p class="lede">${say.privateLede()}</p></section>
${classes.map((one) => papers(one, link))}
</main>`;
}

function papers({ slug, plan, date, sheets, fitting }: ClassCard, link: LinkTo): Html {
  const folder = `classes/${slug}`;
  const files = sheets.map((name) => html`<a href="${folder}/cut/${name}-mm.svg">${name}</a>`);
  return html`<section class="prose"><h2><a href="${link(`/classes/${slug}/`)}" dir="auto">${plan.title}</a></h2>
<p>${rich(say.classWhen, { date: html`<strong>${date}</strong>`, place: plan.place })}</p>
<ul>
<li>${rich(say.privateTeacher, {
    packet: html`<a href="${folder}/teacher.pdf">${say.classTeacherPacket()}</a>`,
    read: html`<a href="${folder}/teacher/index.html">${say.classTeacherRead()}</a>`,
  })}</li>
<li>${rich(say.privatePlan, {
    plan: html`<a href="${folder}/print-plan.pdf">${say.papersPlan()}</a>`,
    read: html`<a href="${folder}/print-plan/index.html">${say.classTeacherRead()}</a>`,
  })}</li>
<li><a href="${folder}/room/index.html">${say.roomLink()}</a></li>
${fitting.length > 0 && mergedFiles(folder, plan.paper)}
${files.length > 0 && html`<li><a href="${folder}/${CUT_SHEETS}">${say.classCutSheetsPdf()}</a></li><li>${rich(say.classCutFiles, { files: linkRow(files) })}</li>`}
</ul></section>
`;
}

/** All seats' packets: whole, and parted into what is read and what is cut out. */
function mergedFiles(folder: string, paper: string): Html {
  const link = (name: string, words: string): Html => html`<a href="${folder}/${name}-${paper}.pdf">${words}</a>`;
  return html`<li>${link("all-seats", say.classAllPackets())}</li>
<li>${rich(say.classPartedPackets, { read: link("to-read", say.classToRead()), cut: link("to-cut-out", say.classToCutOut()) })}</li>`;
}

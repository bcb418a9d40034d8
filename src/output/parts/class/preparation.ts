import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { seatsText } from "../../../words/seats.ts";
import { privateFolder } from "../../private-folder.ts";
import { type ClassView, hasKnives, type SheetFigure } from "../../views/class/class-view.ts";
import type { PreparationRow } from "../../views/class/preparation-view.ts";
import { type Html, html, type Markup, raw, rich } from "../markup.ts";

/** What the teacher does before the class, in order, and the sheets that parts are cut from. */
export function preparationSection(view: ClassView): Html {
  const cutReady = view.plan.ready.includes("parts");
  return html`<section class="flow" data-flow><h2>${say.teacherPrepare()}</h2>
<ol class="prepare">${tasks(view).map(
    (task) => html`
<li><span class="box"></span>${task}</li>`,
  )}
</ol>
${!cutReady && view.preparation.length > 0 && cutInClass(view.preparation)}
${view.sheets.length > 0 && [bagsTable(view), cutSheets(view)]}
</section>`;
}

function bagsTable({ bags, sharedGauges }: ClassView): Html {
  const rows = bags.map(
    ({ seat, parts, gauge }) =>
      html`<tr><td><span class="box"></span></td><th scope="row">${seat}</th><td>${rowText(parts)}${gauge !== "" && html`<span class="note">${gauge}</span>`}</td></tr>`,
  );
  return html`<h2>${say.papersBags()}</h2>
${sharedGauges.map((line) => html`<p>${line}</p>`)}
<table class="bags"><thead><tr><td></td><th scope="col">${say.classSeatHead()}</th><th scope="col">${say.papersBagsPartHead()}</th></tr></thead><tbody>${rows}</tbody></table>`;
}

function cutSheets({ slug, sheetFigures }: ClassView): Html {
  return html`<h2>${say.teacherCutSheets()}</h2>
<ul class="cut-sheets">${sheetFigures.map(sheet)}</ul>
<p class="note">${rich(say.teacherCutNote, { folder: html`<code>${privateFolder(slug)}/cut/</code>` })}</p>`;
}

function tasks(view: ClassView): Markup[] {
  const { plan, seats, preparation, hasLight, hasWindow } = view;
  const misfits = seats.filter(({ misfit }) => misfit);
  const awaiting = plan.awaiting.map(({ number }) => number);
  return [
    ...(awaiting.length > 0 ? [say.teacherCollect({ count: awaiting.length, seats: seatsText(awaiting) })] : []),
    say.teacherPrint(),
    ...misfits.map(({ number, kitTitle }) => say.teacherSettle({ seat: number, kit: kitTitle })),
    hasLight ? say.teacherBuyLight() : hasKnives(view) ? say.teacherBuy() : say.teacherBuyFolded(),
    ...(plan.ready.includes("parts")
      ? preparation.map(cutBefore)
      : [hasWindow ? say.teacherLayOutWindow() : say.teacherLayOut()]),
    ...(plan.ready.includes("scores") ? [say.teacherScores()] : []),
    say.teacherBag({ things: rowText(bagThings(view)) }),
    roomTask(view),
  ];
}

/** How the room is laid out: seats without a knife away from those that cut. */
function roomTask({ seats }: Pick<ClassView, "seats">): string {
  const folded = seats.filter(({ knifeFree }) => knifeFree).map(({ number }) => number);
  if (folded.length === 0) return say.teacherRoom();
  if (!hasKnives({ seats })) return say.teacherRoomFolded();
  return `${say.teacherRoom()} ${say.teacherRoomApart({ seats: seatsText(folded) })}`;
}

function cutBefore({ what, where }: PreparationRow): Html {
  return html`${rich(say.teacherCut, { what: html`<strong>${what}</strong>` })}<span class="note">${where}</span>`;
}

/** What goes into each seat's bag. */
function bagThings({ plan, hasLight, hasWindow }: ClassView): string[] {
  return [
    say.teacherBagPacket(),
    plan.ready.includes("parts") ? cutThings(hasWindow) : sheetThings(hasWindow),
    ...(hasLight ? [say.teacherBagLight()] : []),
    say.teacherBagCard(),
  ];
}

function cutThings(hasWindow: boolean): string {
  return hasWindow ? say.teacherBagParts() : say.teacherBagGauge();
}

function sheetThings(hasWindow: boolean): string {
  return hasWindow ? say.teacherBagSheets() : say.teacherBagGaugeSheet();
}

function cutInClass(preparation: readonly PreparationRow[]): Html {
  return html`<h2>${say.teacherCutInClass()}</h2>
<ul class="columns two">${preparation.map((row) => html`<li>${say.teacherCutFor({ what: row.what, where: row.where })}</li>`)}</ul>`;
}

function sheet({ svg, name, size }: SheetFigure): Html {
  return html`<li>${raw(svg)}<p><b>${name}</b> ${size}</p></li>`;
}

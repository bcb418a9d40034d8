import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { SessionView } from "../../views/class/schedule-view.ts";
import { type Html, html } from "../markup.ts";
import { inRows } from "./in-rows.ts";

/** When the sessions are, and how much of each is for the work. */
export function sessionsTable({ sessions }: Pick<ClassView, "sessions">): Html {
  return html`<table class="plain sessions"><thead><tr><th scope="col">${say.classSession()}</th><th scope="col">${say.classSessionWhen()}</th><th scope="col">${say.classSessionLength()}</th><th scope="col">${say.classSessionWork()}</th></tr></thead><tbody>${sessions.map(sessionRow)}</tbody></table>`;
}

function sessionRow(session: SessionView): Html {
  const { title, length, work } = session;
  return html`<tr><th scope="row">${title}</th><td data-label="${say.classSessionWhen()}">${timeOf(session)}</td><td data-label="${say.classSessionLength()}">${length}</td><td data-label="${say.classSessionWork()}">${work}</td></tr>`;
}

function timeOf({ date, clock }: SessionView): string {
  return date !== "" && clock !== "" ? say.classSessionTime({ date, clock }) : date + clock;
}

/** Sessions side by side, with room for how far each seat is. */
const SESSIONS_A_ROW = 6;

/** Where each seat should be when a session ends. */
export function reachTable(view: Pick<ClassView, "sessions" | "schedule">): Html {
  return html`${inRows([...view.sessions.entries()], SESSIONS_A_ROW).map((some) => reachOf(view, some))}`;
}

function reachOf(
  { schedule }: Pick<ClassView, "schedule">,
  sessions: readonly (readonly [number, SessionView])[],
): Html {
  const heads = sessions.map(([, { title }]) => html`<th scope="col">${title}</th>`);
  const rows = schedule.map(({ seat, hours, reaches, pauses }) => {
    const cells = sessions.map(
      ([i, { title }]) =>
        html`<td data-label="${title}">${reaches[i]!}${pauses[i] !== "" && html`<span class="note">${pauses[i]!}</span>`}</td>`,
    );
    return html`<tr><th scope="row" data-label="${say.classSeatHead()}">${seat}</th><td data-label="${say.classWorkHead()}">${hours}</td>${cells}</tr>`;
  });
  return html`<table class="plain reach"><caption>${say.classReaches()}</caption><thead><tr><th scope="col">${say.classSeatHead()}</th><th scope="col">${say.classWorkHead()}</th>${heads}</tr></thead><tbody>${rows}</tbody></table>`;
}

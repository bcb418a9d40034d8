import { OPERATIONS, type Operation, REFERENCE } from "../../core/packing/operation.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { CUT_FORMS, type CutForm, writtenForms } from "../cut/written-forms.ts";
import type { KitView } from "../views/kit-view.ts";
import { pocketView, type WindowView, windowView } from "../views/window-view.ts";
import { type Html, html } from "./markup.ts";
import { lightAndWindow } from "./window.ts";

/** The layer that holds what is measured before cutting. */
const CHECK: Operation = "measure-check";

/** Light and window on a kit's page. */
export function windowPart({ kit, pattern }: Pick<KitView, "kit" | "pattern">): Html {
  const view = { pocket: pocketView(kit, pattern), window: windowView(kit, pattern) };
  return lightAndWindow(view, { ofPart: partFiles, ofSheets: sheetFiles });
}

/** Links to the files of one part. */
function partFiles(file: string): Html {
  return html`<p class="files">${links(file, 0, " · ", {
    "mm.svg": "SVG",
    "mm.dxf": say.kitFileUnit({ format: "DXF", unit: "mm" }),
    "72dpi.svg": say.kitFile72(),
    "inch.dxf": say.kitFileUnit({ format: "DXF", unit: say.kitFileInch() }),
  })}</p>`;
}

/** Links to the files of all parts laid out on sheets. */
function sheetFiles(sheets: WindowView["sheets"]): Html {
  const items = sheets.map(({ name, note, files }, paper) => {
    const ofSheets = files.map((file, i) => html`${i > 0 && ", "}${ofSheet(file, paper)}`);
    return html`<li><b>${name}</b>${note !== "" && ` (${note})`}: ${ofSheets}</li>`;
  });
  const size = say.figureSides({ ...REFERENCE, unit: "mm" });
  const layers = rowText(OPERATIONS.filter((layer) => layer !== CHECK));
  return html`<h4>${say.kitSheets()}</h4>
<ul class="sheet-files">${items}</ul>
<p class="note">${say.kitFilesText({ layers, check: CHECK, size })}</p>`;
}

function ofSheet(file: string, paper: number): Html {
  return html`<span class="files">${file} (${links(file, paper, ", ", {
    "mm.svg": "SVG",
    "mm.dxf": say.kitFileShortUnit({ format: "DXF", unit: "mm" }),
    "72dpi.svg": say.kitFileShort72(),
    "inch.dxf": say.kitFileShortUnit({ format: "DXF", unit: say.kitFileInch() }),
  })})</span>`;
}

/** Links to a drawing in all forms; those that the page makes are there only where scripts are. */
function links(file: string, paper: number, between: string, words: Readonly<Record<CutForm, string>>): Html {
  const written = writtenForms(paper);
  const made = CUT_FORMS.filter((form) => !written.includes(form));
  return html`${written.map((form, i) => html`${i > 0 && between}<a href="cut/${file}-${form}">${words[form]}</a>`)}<span class="made">${made.map((form) => html`${between}<a href="cut/${file}-${form}" data-made>${words[form]}</a>`)}</span>`;
}

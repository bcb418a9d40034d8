import { OPERATIONS, type Operation, REFERENCE } from "../../core/packing/operation.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
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
  const inMm = say.kitFileUnit({ format: "DXF", unit: "mm" });
  const inInches = say.kitFileUnit({ format: "DXF", unit: say.kitFileInch() });
  return html`<p class="files">${link(file, "mm.svg", "SVG")} · ${link(file, "72dpi.svg", say.kitFile72())} · ${link(file, "mm.dxf", inMm)} · ${link(file, "inch.dxf", inInches)}</p>`;
}

/** Links to the files of all parts laid out on sheets. */
function sheetFiles(sheets: WindowView["sheets"]): Html {
  const items = sheets.map(({ name, note, files }) => {
    const links = files.map((file, i) => html`${i > 0 && ", "}${ofSheet(file)}`);
    return html`<li><b>${name}</b>${note !== "" && ` (${note})`}: ${links}</li>`;
  });
  const size = say.figureSides({ ...REFERENCE, unit: "mm" });
  const layers = rowText(OPERATIONS.filter((layer) => layer !== CHECK));
  return html`<h4>${say.kitSheets()}</h4>
<ul class="sheet-files">${items}</ul>
<p class="note">${say.kitFilesText({ layers, check: CHECK, size })}</p>`;
}

function ofSheet(file: string): Html {
  const inMm = say.kitFileShortUnit({ format: "DXF", unit: "mm" });
  const inInches = say.kitFileShortUnit({ format: "DXF", unit: say.kitFileInch() });
  return html`<span class="files">${file} (${link(file, "mm.svg", "SVG")}, ${link(file, "mm.dxf", inMm)}, ${link(file, "inch.dxf", inInches)}, ${link(file, "72dpi.svg", say.kitFileShort72())})</span>`;
}

function link(file: string, ending: string, words: string): Html {
  return html`<a href="cut/${file}-${ending}">${words}</a>`;
}

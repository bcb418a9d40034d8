import { benchMisfitText } from "../../words/findings/bench-misfit.ts";
import * as say from "../../words/messages.ts";
import { part } from "../bench/bench-dom.ts";
import { openPiece } from "../bench/open-piece.ts";
import { openForPrint } from "../shared/closed-details.ts";
import { make } from "../shared/dom.ts";
import { loadKitData } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import { MakePage } from "./make-page.ts";

/** Script of the page on which a piece is made. */
const root = document.querySelector<HTMLElement>("[data-make]");
if (root) open(root);
openForPrint();

async function open(page: HTMLElement): Promise<void> {
  try {
    const data = await loadKitData("../kit-data.js");
    const opened = await openPiece(data, new URLSearchParams(location.search));
    if ("failure" in opened) {
      tell(page, [benchMisfitText(opened.failure, data.kit), ...opened.told]);
      page.querySelector<HTMLElement>(".chapters")!.hidden = true;
      return;
    }
    if (opened.told.length > 0) tell(page, opened.told);
    new MakePage(page, opened, data.cautions);
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
    tell(page, [say.loadKitData()]);
  }
}

function tell(page: HTMLElement, told: readonly string[]): void {
  const place = part(page, "wait");
  place.hidden = false;
  place.replaceChildren(...told.map((words) => make("p", "", words)));
}

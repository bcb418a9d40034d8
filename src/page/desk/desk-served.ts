import type { DeskNews, PrintAsk } from "../../input/desk/protocol.ts";
import { servedFar } from "../../output/parts/desk/served.ts";
import * as say from "../../words/messages.ts";

/** Script of a served page of a kit or a class: prints its PDFs when that is asked for, and shows how far that is. */
const strip = document.querySelector<HTMLElement>(".served-strip");
const button = strip?.querySelector<HTMLButtonElement>("[data-print]");
if (strip && button) watch(strip, button);

function watch(place: HTMLElement, press: HTMLButtonElement): void {
  const [kind, slug] = press.dataset["print"]!.split(" ") as [PrintAsk["kind"], string];
  const far = place.querySelector("[data-far]")!;
  const show = (markup: string): void => {
    far.innerHTML = markup;
  };
  const news = new EventSource("/.serving/news");
  news.addEventListener("news", ({ data }) => {
    const heard = JSON.parse(data) as DeskNews;
    if (heard.news !== "printing" || heard.kind !== kind || heard.slug !== slug) return;
    show(String(servedFar(heard)));
    press.disabled = heard.ended !== true;
  });
  press.addEventListener("click", () => {
    press.disabled = true;
    show(String(servedFar({ done: 0, of: 0 })));
    void print({ kind, slug }).then((isTaken) => {
      press.disabled = isTaken;
      if (!isTaken) far.textContent = say.servedAway();
    });
  });
}

async function print(asked: PrintAsk): Promise<boolean> {
  try {
    const headers = { "content-type": "application/json", "x-leaflight-served": "1" };
    const { ok } = await fetch("/.serving/print", { method: "POST", headers, body: JSON.stringify(asked) });
    return ok;
  } catch (error) {
    if (error instanceof TypeError) return false;
    throw error;
  }
}

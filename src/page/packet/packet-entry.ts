import { fromAddress } from "../../core/refit/address.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import { packetFooter } from "../../output/views/packet-footer.ts";
import { withPacket } from "../../output/views/packet-view.ts";
import { PAPERS, pageRule } from "../../output/views/paper.ts";
import { fitted } from "../kit/fitted.ts";
import { renderPart } from "../kit/render.ts";
import { loadKitData } from "../shared/kit-data.ts";

/** Script of a packet page: with a book in its address the packet is laid out for it, to be printed from the browser. */
const refit = fromAddress(new URLSearchParams(location.search));
const main = document.querySelector("main");
const bar = document.querySelector<HTMLElement>("[data-print-bar]");
const template = document.body.dataset["template"];

if (bar) bar.hidden = false;
if (main && template && Object.keys(refit).length > 0) layOut(main, template);
bar?.querySelector("button")?.addEventListener("click", () => window.print());

async function layOut(target: HTMLElement, name: string): Promise<void> {
  const data = await loadKitData("../kit-data.js");
  const result = fitted(data, refit);
  if ("problem" in result) {
    target.textContent = `This kit does not fit the book in this address: ${result.problem.given}; ${result.problem.allowed}. Go back to the kit's page and choose one of its offers.`;
    return;
  }
  const view = withPacket(result.view);
  target.innerHTML = renderPart(name, view);
  const svg = frontPicture(view.pattern, { slug: view.slug, title: view.kit.title, mood: "day" });
  for (const image of target.querySelectorAll<HTMLImageElement>(".cover-picture"))
    image.src = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  document.body.className = `${view.kit.units}-kit`;
  const paper = bar?.querySelector("select");
  const sheet = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  const choose = (): void => {
    const chosen = PAPERS.find((one) => one.name === paper?.value) ?? PAPERS[0]!;
    sheet.replaceSync(pageRule(chosen, packetFooter(view.kit, `${view.kit.title}: packet`, chosen)));
  };
  paper?.addEventListener("change", choose);
  choose();
}

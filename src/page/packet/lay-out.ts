import type { Steps } from "../../core/in-steps.ts";
import { fromAddress } from "../../core/refit/address.ts";
import { refitKit } from "../../core/refit/refit.ts";
import { PACKET_PAGES, type PacketPage } from "../../output/parts/packet.ts";
import { packetFooter } from "../../output/views/packet-footer.ts";
import { withPacket } from "../../output/views/packet-view.ts";
import { PAPERS, pageRule } from "../../output/views/paper.ts";
import { drawStep } from "../../output/views/step-drawing.ts";
import { ignoredText } from "../../words/fields.ts";
import { whyText } from "../../words/findings/failure-why.ts";
import * as say from "../../words/messages.ts";
import { needWay } from "../kit/corner-way.ts";
import { viewSteps } from "../kit/fitted.ts";
import { after } from "../shared/after.ts";
import { loadKitData } from "../shared/kit-data.ts";
import { loadScript } from "../shared/load-script.ts";

/**
 * Lays a packet's page out for the book in its address, to be printed from the browser; says why where it does not fit. `bar`
 * is where the paper is chosen.
 * @throws LoadError where the kit's data, or what draws its cover, cannot be loaded
 */
export async function layOut(target: HTMLElement, bar: HTMLElement | null): Promise<void> {
  const name = document.body.dataset["template"] as PacketPage | undefined;
  if (!name) return;
  const data = await loadKitData("../kit-data.js");
  const { refit, ignored } = fromAddress(new URLSearchParams(location.search), data.kit);
  for (const one of ignored) tell(bar, ignoredText(one, data.kit));
  if (Object.keys(refit).length === 0) return;
  const kit = refitKit(data.kit, refit);
  await needWay(kit, "../../../");
  await loadScript("../../../assets/scripts/files.js", "file-maker");
  const result = await withPauses(viewSteps(data, kit, drawStep));
  if ("failure" in result) {
    target.textContent = say.packetMisfit({ why: whyText(result.failure, data.kit) });
    return;
  }
  const { view } = result;
  await after();
  const sheets =
    view.way === "corner" ? self.leaflightCorner!.packet(name, view) : String(PACKET_PAGES[name](withPacket(view)));
  await after();
  target.innerHTML = sheets;
  const svg =
    view.way === "corner"
      ? self.leaflightCorner!.file("front.svg", view)!
      : window.leaflightFile!(view.pattern.pocket ? "front-lit.svg" : "front.svg", view)!;
  for (const image of target.querySelectorAll<HTMLImageElement>(".cover-picture"))
    image.src = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  const paper = bar?.querySelector("select");
  const sheet = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  const choose = (): void => {
    const chosen = PAPERS.find((one) => one.name === paper?.value) ?? PAPERS[0]!;
    sheet.replaceSync(pageRule(chosen, packetFooter(view.kit, say.packetTitle({ title: view.kit.title }), chosen)));
  };
  paper?.addEventListener("change", choose);
  choose();
}

/** With thousands of leaves each step takes a while: between them the page answers. */
async function withPauses<Result>(steps: Steps<Result>): Promise<Result> {
  for (;;) {
    await after();
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** In the bar, which is not printed. */
function tell(bar: HTMLElement | null, words: string): void {
  const line = document.createElement("p");
  line.setAttribute("role", "status");
  line.textContent = words;
  bar?.append(line);
}

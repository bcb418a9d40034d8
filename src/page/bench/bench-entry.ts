import { fromAddress } from "../../core/refit/address.ts";
import { whyText } from "../../words/findings/failure-why.ts";
import * as say from "../../words/messages.ts";
import { loadKitData } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import { make, part } from "./bench-dom.ts";
import { openBench } from "./bench-page.ts";

/** Script of a bench page. */
const root = document.querySelector<HTMLElement>("[data-bench]");
if (root) open(root);

async function open(bench: HTMLElement): Promise<void> {
  const wait = part(document, "wait");
  try {
    const data = await loadKitData("../kit-data.js");
    bench.hidden = false;
    const failure = openBench(bench, data, fromAddress(new URLSearchParams(location.search)));
    bench.hidden = failure !== undefined;
    if (failure) wait.replaceChildren(make("p", "", say.benchMisfit({ why: whyText(failure, data.kit) })), tableLink());
    else wait.remove();
  } catch (error) {
    bench.hidden = true;
    wait.replaceChildren(make("p", "", say.loadKitData()), tableLink());
    if (!(error instanceof LoadError)) throw error;
  }
}

function tableLink(): HTMLElement {
  const link = make("a", "", say.benchTableLink());
  link.href = `../index.html${location.search}`;
  return make("p", "", link, ".");
}

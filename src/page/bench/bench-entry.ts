import * as say from "../../words/messages.ts";
import { loadKitData } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import { make, part } from "./bench-dom.ts";
import { openBench } from "./bench-page.ts";
import { whyNot } from "./why-not.ts";

/** Script of a bench page. */
const root = document.querySelector<HTMLElement>("[data-bench]");
if (root) open(root);

async function open(bench: HTMLElement): Promise<void> {
  const wait = part(document, "wait");
  try {
    const data = await loadKitData("../kit-data.js");
    const misfit = await openBench(bench, data, new URLSearchParams(location.search));
    bench.hidden = misfit !== undefined;
    if (misfit) {
      const told = [await whyNot((words) => words.misfit(misfit.failure, data.kit)), ...misfit.told];
      wait.replaceChildren(...told.map((words) => make("p", "", words)), tableLink());
    } else wait.remove();
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

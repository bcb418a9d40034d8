import { Problem } from "../../core/problem.ts";
import { fromAddress } from "../../core/refit/address.ts";
import * as say from "../../words/messages.ts";
import { loadKitData } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import { make, part } from "./bench-dom.ts";
import { BenchPage } from "./bench-page.ts";

/** Script of a bench page. */
const root = document.querySelector<HTMLElement>("[data-bench]");
if (root) open(root);

async function open(bench: HTMLElement): Promise<void> {
  const wait = part(document, "wait");
  try {
    const data = await loadKitData("../kit-data.js");
    bench.hidden = false;
    new BenchPage(bench, data, fromAddress(new URLSearchParams(location.search)));
    wait.remove();
  } catch (error) {
    bench.hidden = true;
    wait.replaceChildren(make("p", "", why(error)), tableLink());
    if (!(error instanceof Problem || error instanceof LoadError)) throw error;
  }
}

function why(error: unknown): string {
  return error instanceof Problem ? say.benchMisfit(error) : say.loadKitData();
}

function tableLink(): HTMLElement {
  const link = make("a", "", say.benchTableLink());
  link.href = `../index.html${location.search}`;
  return make("p", "", link, ".");
}

import { Problem } from "../../core/problem.ts";
import { fromAddress } from "../../core/refit/address.ts";
import { loadKitData } from "../shared/kit-data.ts";
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
    if (!(error instanceof Problem || (error instanceof Error && error.message.startsWith("the kit's data"))))
      throw error;
  }
}

function why(error: unknown): string {
  return error instanceof Problem
    ? `This kit does not fit the book in this address: ${error.given}; ${error.allowed}.`
    : "The kit’s data could not be loaded.";
}

function tableLink(): HTMLElement {
  const link = make("a", "", "The kit’s page has the pattern table and the fit panel");
  link.href = `../index.html${location.search}`;
  return make("p", "", link, ".");
}

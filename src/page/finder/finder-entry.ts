import { bindFinder } from "./finder-page.ts";

/** Script of the catalogue. */
const finder = document.querySelector<HTMLDetailsElement>("[data-finder]");
if (finder) bindFinder(finder);

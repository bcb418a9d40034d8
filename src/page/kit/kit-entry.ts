import { bindRefit } from "./refit-page.ts";

/** Script of a kit page. */
const form = document.querySelector<HTMLFormElement>("[data-refit-panel]");
if (form) bindRefit(form);

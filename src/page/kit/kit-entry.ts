import { openForPrint, openTarget } from "../shared/closed-details.ts";
import { standBy } from "./stand-by.ts";

/** Script of a kit page. */
const form = document.querySelector<HTMLFormElement>("[data-refit-panel]");
if (form) standBy(form);

openTarget();
openForPrint();

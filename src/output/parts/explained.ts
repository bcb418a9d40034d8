import type { Html } from "./markup.ts";
import { withTerms } from "./terms.ts";

/** The glossary as a kit's page links to it. */
const GLOSSARY = "../../glossary/index.html";

/** A part in which terms lead to the glossary. */
export function explained<View>(part: (view: View) => Html): (view: View) => Html {
  return (view) => withTerms(part(view), GLOSSARY);
}

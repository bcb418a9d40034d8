import * as say from "../../words/messages.ts";
import { type Term, terms } from "../../words/terms.ts";
import { type Html, html, raw } from "./markup.ts";

/** In these a term is no link: it is one already, a heading, a control, a drawing, or the cell of a table. */
const CLOSED = /^(a|h[1-6]|button|label|option|select|svg|table|summary|dfn|script|style|code)$/;

/** Words that are joined to another are no term: `leaf-wise`, `header`. */
const EDGE = "[\\p{L}\\p{N}-]";

/**
 * A section of a page with each term linked to the glossary where the section first uses it. `page` is the glossary's
 * address as seen from the page. Nothing else of the markup changes.
 */
export function withTerms(section: Html, page: string): Html {
  const left = new Map(
    terms().flatMap((term) => term.forms.flatMap((form) => [form, capital(form)].map((one) => [one, term] as const))),
  );
  const linked = new Set<Term>();
  const closed: string[] = [];
  const pieces = section.toString().split(/(<[^>]*>)/);
  const wanted = new RegExp(
    `(?<!${EDGE})(${[...left.keys()].toSorted(longestFirst).map(escaped).join("|")})(?!${EDGE})`,
    "gu",
  );
  const done = pieces.map((piece) => {
    if (piece.startsWith("<")) {
      follow(closed, piece);
      return piece;
    }
    if (closed.length > 0) return piece;
    return piece.replace(wanted, (form) => {
      const term = left.get(form)!;
      if (linked.has(term)) return form;
      linked.add(term);
      return termLink(term, form, page).toString();
    });
  });
  return raw(done.join(""));
}

function termLink({ id, name }: Term, form: string, page: string): Html {
  return html`<a class="term" href="${page}#${id}" title="${say.glossaryLink({ term: name })}">${form}</a>`;
}

/** Keeps count of the elements that are open and in which nothing is linked. */
function follow(closed: string[], tag: string): void {
  const name = /^<\/?([a-z0-9]+)/i.exec(tag)?.[1]?.toLowerCase() ?? "";
  if (!CLOSED.test(name) || tag.endsWith("/>")) return;
  if (!tag.startsWith("</")) closed.push(name);
  else if (closed.at(-1) === name) closed.pop();
}

/** As a form stands at the beginning of a sentence or alone. */
function capital(form: string): string {
  return form.charAt(0).toUpperCase() + form.slice(1);
}

function longestFirst(a: string, b: string): number {
  return b.length - a.length;
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}

import type { Kit } from "../../core/kit/kit.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { paperLabel } from "../../words/papers.ts";
import { PAPERS } from "../views/paper.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** Whose packet it is: a kit's own, or that of a seat, whose page it leads back to by its title. */
export interface PacketOf {
  readonly kit: Kit;
  readonly seat: string | undefined;
}

/** The bar above a packet in the browser: the way back, which paper, and a button. It is not printed. */
export function printBar({ kit, seat }: PacketOf): Html {
  const papers = PAPERS.map(({ name }) => html`<option value="${name}">${paperLabel(name)}</option>`);
  return html`<header class="print-head"><a class="home" href="../index.html" data-home><span aria-hidden="true">‹</span> ${say.packetHome({ title: seat ?? kit.title })}</a>
${seat === undefined && whose(kit)}<form class="print-bar" data-print-bar hidden><label>${say.packetPaper()} <select>${papers}</select></label> <button type="button">${say.packetPrint()}</button> <span>${say.packetScale()}</span></form></header>`;
}

/** Without scripts an address that carries a book changes nothing: the reader is told. */
function whose({ book, units }: Kit): Markup {
  const size = (mm: number): string => formatSize(mm, units);
  const told = say.packetWhose({
    leaves: book.leaves,
    height: size(book.leafHeight),
    width: size(book.leafWidth),
    thickness: size(book.blockThickness),
  });
  return html`<noscript><p>${told}</p></noscript>
`;
}

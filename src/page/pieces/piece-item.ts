import { PIECE_LENGTHS, type Piece } from "../../core/piece/piece.ts";
import { fromAddress } from "../../core/refit/address.ts";
import { serialisePieces } from "../../input/piece/piece-file.ts";
import { statedBook } from "../../words/books.ts";
import * as say from "../../words/messages.ts";
import { dayOf, doneWords, pieceName } from "../../words/pieces.ts";
import { button, linkTo, make } from "../shared/dom.ts";
import { offerFile } from "../shared/offer-file.ts";
import { pieceFileName } from "./file-name.ts";
import { continueWords, pieceAddress } from "./piece-card.ts";

/** What a list of pieces does with one. */
export interface PieceHost {
  /** The site's folder as seen from the page, with its slash. */
  readonly site: string;
  /** The titles of this site's kits by their slugs. */
  readonly titles: Readonly<Record<string, string>>;
  /** Keeps a name or notes with the piece as it is by now. */
  note(id: string, change: Partial<Pick<Piece, "name" | "notes">>): Promise<Piece | undefined>;
  /** The piece as it was kept last. */
  now(piece: Piece): Piece;
  remove(piece: Piece): void;
}

/** A piece with all that can be done with it. */
export function pieceItem(piece: Piece, host: PieceHost): HTMLElement {
  const { site, titles } = host;
  const here = titles[piece.kit];
  const heading = make("h2", "", pieceName(piece));
  const facts = make("p", "note", factsOf(piece).join(" · "));
  const item = make("li", "piece-item", ...(here === undefined ? [] : [picture(piece, site)]));
  const words = make("div", "piece-words", make("p", "piece-kit", here ?? piece.title), heading, bar(piece), facts);
  const notes = make("p", "piece-notes", piece.notes);
  notes.hidden = piece.notes === "";
  words.append(notes);
  words.append(here === undefined ? make("p", "piece-gone", say.piecesKitGone()) : ways(piece, site));
  const show = (changed: Piece): void => {
    heading.textContent = pieceName(changed);
    notes.textContent = changed.notes;
    notes.hidden = changed.notes === "";
  };
  words.append(form(piece, host, show), actions(piece, host));
  item.dataset["id"] = piece.id;
  item.append(words);
  return item;
}

function factsOf({ summary, begun, last, address }: Piece): string[] {
  const { percent } = summary;
  const { refit } = fromAddress(new URLSearchParams(address));
  const book = statedBook(refit, refit.units ?? "mm");
  return [
    ...(book === "" ? [] : [book]),
    doneWords(summary),
    ...(percent === undefined ? [] : [percent === 100 ? say.piecesFinished() : say.piecesPercent({ percent })]),
    say.piecesBegun({ day: dayOf(begun) }),
    say.piecesLast({ day: dayOf(last) }),
  ];
}

function picture({ kit }: Piece, site: string): HTMLElement {
  const image = make("img", "");
  image.src = `${site}kits/${kit}/front.svg`;
  image.alt = "";
  image.loading = "lazy";
  return image;
}

function bar({ summary: { percent } }: Piece): HTMLElement {
  const made = make("progress", "");
  made.max = 100;
  made.value = percent ?? 0;
  made.hidden = percent === undefined;
  // What it shows stands beside it in words.
  made.setAttribute("aria-hidden", "true");
  return made;
}

function ways(piece: Piece, site: string): HTMLElement {
  const page = `${site}kits/${piece.kit}/index.html${piece.address === "" ? "" : `?${piece.address}`}`;
  const on = linkTo(pieceAddress(piece, site, "bench"), continueWords(piece.summary), "button");
  const own = linkTo(pieceAddress(piece, site, "make"), say.piecesOwnPage());
  return make("p", "piece-actions", on, " ", own, " ", linkTo(page, say.piecesKitPage()));
}

/** Name and notes are kept field by field; the list stays as it is, so that nothing that is being written is lost. */
function form(piece: Piece, host: PieceHost, show: (changed: Piece) => void): HTMLElement {
  const name = make("input", "");
  name.value = piece.name;
  name.maxLength = PIECE_LENGTHS.name;
  name.placeholder = say.pieceNumber({ number: piece.number });
  const notes = make("textarea", "");
  notes.value = piece.notes;
  notes.maxLength = PIECE_LENGTHS.notes;
  notes.rows = 4;
  const keep = async (change: Partial<Pick<Piece, "name" | "notes">>): Promise<void> => {
    const changed = await host.note(piece.id, change);
    if (changed) show(changed);
  };
  name.addEventListener("change", () => keep({ name: name.value }));
  notes.addEventListener("change", () => keep({ notes: notes.value }));
  return make(
    "details",
    "",
    make("summary", "", say.piecesEdit()),
    make("label", "field", say.piecesName(), " ", name),
    make("label", "field", say.piecesNotes(), " ", notes),
  );
}

function actions(piece: Piece, host: PieceHost): HTMLElement {
  const save = linkTo("#", say.piecesSave(), "button plain-button");
  save.addEventListener("click", () => {
    const now = host.now(piece);
    offerFile(save, serialisePieces([now]), pieceFileName(now));
  });
  const remove = button(say.piecesRemove(), "button plain-button", () => {
    const now = host.now(piece);
    const sure = { piece: pieceName(now), count: now.summary.done };
    if (window.confirm(say.piecesRemoveSure(sure))) host.remove(now);
  });
  return make("p", "piece-actions", save, " ", remove);
}

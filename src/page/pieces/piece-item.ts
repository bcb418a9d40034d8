import { noteOn, PIECE_LENGTHS, type Piece } from "../../core/piece/piece.ts";
import { serialisePieces } from "../../input/piece/piece-file.ts";
import * as say from "../../words/messages.ts";
import { dayOf, doneWords, pieceName } from "../../words/pieces.ts";
import { button, linkTo, make } from "../shared/dom.ts";
import { offerFile } from "../shared/offer-file.ts";
import { deviceName } from "./device.ts";
import { pieceFileName } from "./file-name.ts";
import { continueWords, pieceAddress } from "./piece-card.ts";

/** What a list of pieces does with one. */
export interface PieceHost {
  /** The site's folder as seen from the page, with its slash. */
  readonly site: string;
  /** The titles of this site's kits by their slugs. */
  readonly titles: Readonly<Record<string, string>>;
  keep(piece: Piece): void;
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
  if (piece.notes !== "") words.append(make("p", "piece-notes", piece.notes));
  words.append(here === undefined ? make("p", "piece-gone", say.piecesKitGone()) : ways(piece, site));
  words.append(form(piece, host), actions(piece, host));
  item.dataset["id"] = piece.id;
  item.append(words);
  return item;
}

function factsOf({ summary, begun, last }: Piece): string[] {
  const { percent } = summary;
  return [
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
  const on = linkTo(pieceAddress(piece, site), continueWords(piece.summary), "button");
  return make("p", "piece-actions", on, " ", linkTo(page, say.piecesKitPage()));
}

function form(piece: Piece, host: PieceHost): HTMLElement {
  const name = make("input", "");
  name.value = piece.name;
  name.maxLength = PIECE_LENGTHS.name;
  name.placeholder = say.pieceNumber({ number: piece.number });
  const notes = make("textarea", "");
  notes.value = piece.notes;
  notes.maxLength = PIECE_LENGTHS.notes;
  notes.rows = 4;
  const change = (): void =>
    host.keep(noteOn(piece, { name: name.value, notes: notes.value }, { device: deviceName() }));
  for (const field of [name, notes]) field.addEventListener("change", change);
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
  save.addEventListener("click", () => offerFile(save, serialisePieces([piece]), pieceFileName(piece)));
  const sure = { piece: pieceName(piece), count: piece.summary.done };
  const remove = button(say.piecesRemove(), "button plain-button", () => {
    if (window.confirm(say.piecesRemoveSure(sure))) host.remove(piece);
  });
  return make("p", "piece-actions", save, " ", remove);
}

import { z } from "zod";
import type { KitMessage } from "../files/message.ts";
import type { DrawnParts } from "../kit/drawn-parts.ts";
import type { PickableShape } from "../layers/pickable-shape.ts";

/**
 * What the desk's page and its server say to each other, all of it in JSON. A request is checked with its schema; an answer
 * comes from the server that also gave the page, and only has a type.
 */

/** Where each request goes. `session` and `news` are read with GET, `state` and `text` too; all others are posted. */
export const DESK_ROUTES = {
  session: "/api/session",
  state: "/api/state",
  news: "/api/news",
  text: "/api/text",
  write: "/api/write",
  picture: "/api/picture",
  books: "/api/books",
  open: "/api/open",
  print: "/api/print",
} as const;

/** The header that each POST carries, with the token that `session` gives. */
export const DESK_HEADER = "x-leaflight-desk";

/** A message about a file, and the sentence that it is told in. */
export interface DeskMessage extends KitMessage {
  readonly sentence: string;
}

/** `GET session`: what the page needs to post. */
export interface DeskSession {
  readonly token: string;
  /** The origin of the site that is served beside the desk: `http://localhost:8080`; undefined until it is served. */
  readonly site: string | undefined;
}

/** How a kit or a class is: it comes out well; something is to be looked at before it is begun; not to be made; not looked at yet. */
export type EntryState = "fine" | "look" | "broken" | "waiting";

/** A kit or a class in the list. */
export interface DeskEntry {
  readonly slug: string;
  /** Its title; the folder's name where it cannot be read. */
  readonly title: string;
  /** Its index.md below the project. */
  readonly file: string;
  /** Not published yet. */
  readonly draft: boolean;
  readonly state: EntryState;
  /** Why it is broken. */
  readonly messages: readonly DeskMessage[];
  /** What may disappoint, in sentences. */
  readonly warnings: readonly string[];
  /** Paths of its served pages below the site's origin: `/kits/moon/`. One that is broken may have pages of its last good state. */
  readonly page: string | undefined;
  /** Its page for authors; of kits alone. */
  readonly authorPage: string | undefined;
  /** Where the desk's own server has its cover, with what tells an old one apart; undefined where there is none. */
  readonly cover: string | undefined;
  /** Paths of PDFs that can be printed, below the site's origin. */
  readonly papers: readonly string[];
}

/** `GET state`: all that is on the desk. */
export interface DeskState {
  readonly site: { readonly title: string; readonly language: string };
  readonly kits: readonly DeskEntry[];
  readonly classes: readonly DeskEntry[];
  /** What is wrong with what all of them share: settings, words, motifs. */
  readonly messages: readonly DeskMessage[];
  /** Names of motifs that any kit may set on its window, and of fonts that the settings name. */
  readonly shelf: readonly string[];
  readonly fonts: readonly string[];
  /** Being made, or read again, at this moment. */
  readonly isBusy: boolean;
}

/** A text on the disk. `mark` names its bytes: 64 hexadecimal digits of their SHA-256. */
export interface DeskText {
  readonly file: string;
  readonly text: string;
  readonly mark: string;
}

/** `GET text?file=…`: the text, or why it is none (422). */
export type TextAnswer = DeskText | { readonly messages: readonly DeskMessage[] };

/** A path below the project, with slashes, as messages name it. */
const file = z.string().min(1).max(400);
const slug = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  .max(100);
const mark = z.string().regex(/^[0-9a-f]{64}$/);

/** Names a page that is open, for as long as it is open. */
const page = z
  .string()
  .regex(/^[\w-]+$/)
  .min(8)
  .max(64);

/** `POST write`: puts a text in the place of the one that `mark` names. */
export const writeAsk = z.strictObject({
  file,
  text: z.string().max(2_000_000),
  mark,
  /** The page that asks: in the news about this write it finds its own name. */
  page,
  /** Also where it is broken. */
  anyway: z.boolean().default(false),
});
export type WriteAsk = z.input<typeof writeAsk>;

/** What became of it: 200, 409 where the file is not what `mark` names, 422 where the text is broken and was not asked for anyway. */
export type WriteAnswer =
  | { readonly written: true; readonly mark: string }
  | { readonly written: false; readonly found: DeskText }
  | { readonly written: false; readonly messages: readonly DeskMessage[] };

/** `POST picture`: draws the picture and the motifs that the text of an index.md states. Pictures come from the folder of the kit. */
export const pictureAsk = z.strictObject({ slug, text: z.string().max(1_000_000) });
export type PictureAsk = z.input<typeof pictureAsk>;

/** A shape of a drawing that can be picked for a level; in painter order where there are several. */
export type DeskShape = PickableShape;

/** What was drawn (`drawText` of src/input/kit/draw-text.ts), or why nothing was. The page states the kit with it. */
export type PictureAnswer =
  | { readonly drawn: DrawnParts; readonly shapes: readonly DeskShape[] }
  | { readonly messages: readonly DeskMessage[]; readonly shapes: readonly DeskShape[] };

/** `POST books`: the rows of a class's table that is a workbook, which the desk shows and never writes. */
export const booksAsk = z.strictObject({ slug });

/** Its rows as texts, the head first; or why there are none. */
export type BooksAnswer =
  | { readonly rows: readonly (readonly string[])[] }
  | { readonly messages: readonly DeskMessage[] };

/** `POST open`: opens a file of the desk in the author's editor. */
export const openAsk = z.strictObject({
  file,
  line: z.int().min(1).max(1_000_000).optional(),
  column: z.int().min(1).max(1_000_000).optional(),
});
export type OpenAsk = z.input<typeof openAsk>;

/** `POST print`: prints the PDFs of a kit or a class; how far that is comes with the news. */
export const printAsk = z.strictObject({ kind: z.enum(["kit", "class"]), slug });
export type PrintAsk = z.input<typeof printAsk>;

/** What is answered with any other status than 200, 409 and 422: a sentence for the maker. */
export interface DeskRefusal {
  readonly refused: string;
}

/** News, as server-sent events whose name is `news` and whose data is one of these. */
export type DeskNews =
  /** Something of the list changed. */
  | { readonly news: "state" }
  /** A file has other bytes now. `page` wrote them; undefined where that was no desk. Without `mark` it is gone or cannot be read. */
  | {
      readonly news: "text";
      readonly file: string;
      readonly mark: string | undefined;
      readonly page: string | undefined;
    }
  /** Pages could not be made, and why: a sentence. */
  | { readonly news: "failure"; readonly sentence: string }
  /** How far printing is. `left`: about how many seconds it still takes. `ended`: with a `failure` without its PDFs. */
  | {
      readonly news: "printing";
      readonly kind: "kit" | "class";
      readonly slug: string;
      readonly done: number;
      readonly of: number;
      readonly left?: number;
      readonly ended?: true;
      readonly failure?: string;
    };

/** News of how far printing is. */
export type PrintingNews = Extract<DeskNews, { readonly news: "printing" }>;

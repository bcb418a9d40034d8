import type { Hono } from "hono";
import { told } from "../../input/desk/desk-message.ts";
import { type BooksAnswer, booksAsk, DESK_ROUTES } from "../../input/desk/protocol.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { KitError } from "../../input/files/message.ts";
import { readTable } from "../../input/tables/read-table.ts";
import * as say from "../../words/messages.ts";
import { askedFor } from "./asked-for.ts";
import type { Desk } from "./desk.ts";
import { booksOf } from "./desk-file.ts";
import { refuse } from "./gate.ts";

/** Tables that are no texts, right in the folder of their class. */
const WORKBOOK = /^[^./\\][^/\\]*\.(xlsx|ods)$/i;

/** Reads the table of a class that is a workbook. */
export function booksRoute(app: Hono, { base }: Pick<Desk, "base">): void {
  app.post(DESK_ROUTES.books, async (context) => {
    const asked = await askedFor(context, booksAsk);
    if (!asked) return refuse(context, 400, say.deskOtherForm());
    const home = contentPath(`classes/${asked.slug}`);
    const books = booksOf(base, home);
    if (books === undefined || !WORKBOOK.test(books)) return refuse(context, 404, say.deskNotFound());
    const answer = rowsOf({ base, file: `${home}/${books}`, home, kind: "table" });
    return context.json(answer, "rows" in answer ? 200 : 422);
  });
}

function rowsOf(source: Parameters<typeof readTable>[0]): BooksAnswer {
  try {
    return { rows: readTable(source).map(({ cells }) => cells) };
  } catch (error) {
    if (error instanceof KitError) return { messages: told(error.messages) };
    throw error;
  }
}

import { existsSync, readFileSync } from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import { join } from "node:path";
import { type DeskState, type PrintAsk, printAsk } from "../../input/desk/protocol.ts";
import type { News } from "../desk/news.ts";
import type { PageFiles } from "../desk/page-files.ts";
import { PageServer } from "./page-server.ts";
import { NOTES_STYLE, putNotes } from "./put-notes.ts";
import { UNPRINTED_ADDRESS, UNPRINTED_STYLE } from "./unprinted-page.ts";
import { isVisitable } from "./visits.ts";

/** Where a site is served unless another port is asked for. */
export const SERVED_PORT = 8080;

/** What the served site asks of others. */
export interface ServedWorks {
  /** Prints a PDF below the site, where a build would; gives a page that says why that failed. */
  readonly print: (path: string) => Promise<string | undefined>;
  /** Makes first what stands at a path; settles when it is made, or cannot be. */
  readonly visit: (path: string) => Promise<void>;
  /** Begins to print all of a kit or of a class; how far that is comes as news. */
  readonly printAll: (asked: PrintAsk) => void;
  readonly news: News;
  /** What is known of the site. */
  readonly state: () => DeskState;
  /** The desk's origin. */
  readonly desk: () => string | undefined;
  /** Scripts of what is put on pages. */
  readonly files: PageFiles;
}

/** Serves a folder, has pages that are open load again, and PDFs printed when they are asked for. */
export class ServedSite {
  readonly #server: PageServer;
  readonly #folder: string;
  readonly #works: ServedWorks;
  #isOpen = false;
  #origin: string | undefined;

  /** Others of the network see it where it `isOpenToNetwork`. */
  constructor(folder: string, works: ServedWorks, isOpenToNetwork: boolean) {
    this.#folder = folder;
    this.#works = works;
    this.#server = new PageServer(folder, isOpenToNetwork, {
      // Scripts fill pages: changes in their markup alone would not show.
      domDiff: false,
      logger: { info: console.log, log: console.log, error: () => undefined },
      middleware: [(request, response, next) => void this.#answer(request, response, next)],
    });
  }

  /** Where the site is served; undefined until it is. */
  get origin(): string | undefined {
    return this.#origin;
  }

  /** Opens the site, and says where; later: shows what changed. */
  show(port: number): void {
    if (this.#isOpen) return void this.#server.reload();
    this.#isOpen = true;
    this.#server.serve(port);
    void this.#server.ready().then(() => {
      this.#origin = this.#server.getServerUrl("localhost").replace(/\/$/, "");
    });
  }

  async #answer(request: IncomingMessage, response: ServerResponse, next: () => void): Promise<void> {
    const path = pathOf(request.url ?? "/");
    if (path === undefined) return next();
    if (path.startsWith("/.serving/")) return this.#answerOwn(path, request, response, next);
    if (!path.endsWith(".pdf") && isVisitable(path) && !this.#isThere(path)) await this.#works.visit(path);
    const failure = path.endsWith(".pdf") ? await this.#works.print(path.slice(1)) : undefined;
    if (failure !== undefined) {
      response.statusCode = 500;
      response.setHeader("Content-Type", "text/html; charset=utf-8");
      response.end(failure);
      return;
    }
    this.#noteOn(path, response);
    next();
  }

  /** What only the served site has. */
  async #answerOwn(path: string, request: IncomingMessage, response: ServerResponse, next: () => void): Promise<void> {
    const give = (type: string, text: string): void => {
      response.setHeader("Content-Type", `${type}; charset=utf-8`);
      response.end(text);
    };
    if (path === UNPRINTED_ADDRESS) return give("text/css", UNPRINTED_STYLE);
    if (path === NOTES_STYLE) return give("text/css", readFileSync("layouts/styles/serving.css", "utf8"));
    if (path === "/.serving/news") return this.#tellNews(request, response);
    if (path === "/.serving/print") return void this.#printAll(request, response);
    const script = path.endsWith(".js") ? await this.#works.files.script(path.slice("/.serving/".length)) : undefined;
    if (script === undefined) return next();
    give("text/javascript", script);
  }

  /** Puts on a page what is known of it while it is served. */
  #noteOn(path: string, response: ServerResponse): void {
    const end = response.end.bind(response) as (body?: unknown, ...more: unknown[]) => ServerResponse;
    const isThere = this.#isThere(path);
    const noted = (body: unknown): unknown => {
      const isPage = typeof body === "string" && String(response.getHeader("content-type")).startsWith("text/html");
      return isPage ? putNotes(body, path, { state: this.#works.state(), desk: this.#works.desk(), isThere }) : body;
    };
    response.end = ((body?: unknown, ...more: unknown[]) => end(noted(body), ...more)) as ServerResponse["end"];
  }

  #isThere(path: string): boolean {
    return existsSync(join(this.#folder, path.endsWith("/") ? `${path}index.html` : path));
  }

  /** The news of printing, to a page for as long as it listens. */
  #tellNews(request: IncomingMessage, response: ServerResponse): void {
    response.writeHead(200, { "Content-Type": "text/event-stream", "Cache-Control": "no-store" });
    // Texts would be held back till the end.
    const write = (text: string): boolean => response.write(Buffer.from(text));
    write(": \n\n");
    const stop = this.#works.news.listen((news) => {
      if (news.news === "printing") write(`event: news\ndata: ${JSON.stringify(news)}\n\n`);
    });
    request.once("close", stop);
  }

  /** Prints for a page of this site, and for nobody else's: theirs cannot send this header without asking first. */
  async #printAll(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const { origin, host } = request.headers;
    const isOwn = origin === `http://${host}` && request.headers["x-leaflight-served"] === "1";
    const asked = isOwn && request.method === "POST" ? await askedIn(request) : undefined;
    if (asked) this.#works.printAll(asked);
    response.statusCode = asked ? 204 : 403;
    response.end();
  }
}

/** Most letters of what is asked. */
const MOST = 1000;

async function askedIn(request: IncomingMessage): Promise<PrintAsk | undefined> {
  let text = "";
  for await (const part of request) {
    text += String(part);
    if (text.length > MOST) return undefined;
  }
  try {
    return printAsk.safeParse(JSON.parse(text)).data;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

/** The path of an address; undefined for one that is none. */
function pathOf(address: string): string | undefined {
  try {
    return decodeURIComponent(new URL(address, "http://localhost").pathname);
  } catch {
    return undefined;
  }
}

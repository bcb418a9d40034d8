import {
  DESK_HEADER,
  DESK_ROUTES,
  type DeskNews,
  type DeskRefusal,
  type DeskSession,
  type OpenAsk,
  type PrintAsk,
  type TextAnswer,
  type WriteAnswer,
  type WriteAsk,
} from "../../input/desk/protocol.ts";
import * as say from "../../words/messages.ts";

/** The server refused something, or is not there: the message is a sentence for the maker. */
export class DeskRefused extends Error {
  /** The status of the answer; 0 where there was none. */
  readonly status: number;

  constructor(why: string, status: number) {
    super(why);
    this.status = status;
  }
}

/** Statuses that a route answers with something to read. */
const ANSWERS: readonly number[] = [200, 409, 422];

/** How long a page waits before it listens again, ms. */
const AGAIN = 1000;

/**
 * The desk's server as a page sees it. `page` names this page for as long as it is open: in the news about what it wrote it finds
 * its own name. A server that was started again is known again as soon as this browser has its new key.
 */
export class DeskServer {
  readonly page: string = crypto.randomUUID();
  #session: DeskSession | undefined;

  /** The served site's origin, `http://localhost:8080`; undefined until it is served. @throws DeskRefused */
  async site(): Promise<string | undefined> {
    return this.#session?.site ?? (await this.#renew()).site;
  }

  /** Reads a route. @throws DeskRefused */
  async get<T>(route: string, query: Readonly<Record<string, string>> = {}): Promise<T> {
    const asked = new URLSearchParams(query);
    return (await answerOf(await fetched(asked.size > 0 ? `${route}?${asked}` : route))) as T;
  }

  /** Posts JSON, or bytes as they are. Gives what was answered, whether done or not (409, 422). @throws DeskRefused */
  async post<T>(route: string, body: object | Uint8Array<ArrayBuffer>): Promise<T> {
    const send = async (session: DeskSession): Promise<Response> => {
      const isBytes = body instanceof Uint8Array;
      const headers = {
        [DESK_HEADER]: session.token,
        "content-type": isBytes ? "application/octet-stream" : "application/json",
      };
      return await fetched(route, { method: "POST", headers, body: isBytes ? body : JSON.stringify(body) });
    };
    const answer = await send(this.#session ?? (await this.#renew()));
    return (await answerOf(answer.status === 403 ? await send(await this.#renew()) : answer)) as T;
  }

  /** A text on the disk, or why it is none. @throws DeskRefused */
  async text(file: string): Promise<TextAnswer> {
    return await this.get(DESK_ROUTES.text, { file });
  }

  /** Puts a text in the place of the one that `mark` names. @throws DeskRefused where nothing can be written */
  async write(asked: Omit<WriteAsk, "page">): Promise<WriteAnswer> {
    return await this.post(DESK_ROUTES.write, { ...asked, page: this.page } satisfies WriteAsk);
  }

  /** Opens a file in the author's editor. @throws DeskRefused */
  async open(asked: OpenAsk): Promise<void> {
    await this.post(DESK_ROUTES.open, asked);
  }

  /** Prints all of a kit or of a class. @throws DeskRefused */
  async print(asked: PrintAsk): Promise<void> {
    await this.post(DESK_ROUTES.print, asked);
  }

  /** Listens to news; `lost` hears whether the server is away, and after that, that news may have been missed. */
  listen(heard: (news: DeskNews) => void, lost: (isLost: boolean) => void): void {
    const open = (): void => {
      const source = new EventSource(DESK_ROUTES.news);
      source.addEventListener("open", () => lost(false));
      source.addEventListener("news", ({ data }) => heard(JSON.parse(data) as DeskNews));
      source.addEventListener("error", () => {
        lost(true);
        // A browser gives up by itself where it was refused, as by a server that was started again.
        source.close();
        setTimeout(open, AGAIN);
      });
    };
    open();
  }

  async #renew(): Promise<DeskSession> {
    this.#session = await this.get<DeskSession>(DESK_ROUTES.session);
    return this.#session;
  }
}

async function fetched(address: string, init: RequestInit = {}): Promise<Response> {
  try {
    return await fetch(address, init);
  } catch (error) {
    if (error instanceof TypeError) throw new DeskRefused(say.deskGone(), 0);
    throw error;
  }
}

/** What was answered. @throws DeskRefused where that is a refusal */
async function answerOf(response: Response): Promise<unknown> {
  const isJson = response.headers.get("content-type")?.startsWith("application/json") ?? false;
  const body = isJson ? ((await response.json()) as unknown) : undefined;
  if (ANSWERS.includes(response.status)) return body;
  throw new DeskRefused((body as DeskRefusal | undefined)?.refused ?? say.deskUnopened(), response.status);
}

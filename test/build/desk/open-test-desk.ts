import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { BringRoom } from "../../../src/build/desk/bring-room.ts";
import type { Desk } from "../../../src/build/desk/desk.ts";
import { openDesk } from "../../../src/build/desk/desk-server.ts";
import { DrawingThread } from "../../../src/build/desk/drawing-thread.ts";
import { News } from "../../../src/build/desk/news.ts";
import { PageFiles } from "../../../src/build/desk/page-files.ts";
import { Texts } from "../../../src/build/desk/texts.ts";
import type { DeskNews, DeskSession, PrintAsk } from "../../../src/input/desk/protocol.ts";
import { ENGLISH } from "../../english-words.ts";
import { emptyDesk } from "./empty-desk.ts";

/** The text of a kit that its schema takes. */
export const MOON = `---
title: Moon # of the harbour
summary: A moon over the harbour.
picture: { file: moon.svg, levels: { near: ["#moon"] } }
levels:
  - { name: near, depth: 10 }
  - { name: far, depth: 20, background: true }
book: { leafHeight: 200, leafWidth: 130, blockThickness: 20, leaves: 180, pageOneLeaf: 1 }
fit: { borderLeaves: [10, 10], pictureLeaves: fill, height: 100, opening: solve }
---
It rises at seven.
`;

const EVENING = `---
title: An evening
date: 2027-02-04
place: Reading room
kits: [moon]
books: books.csv
sessions: [{ minutes: 120 }]
---
`;

/** What of an answer tests look at. */
export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
  // biome-ignore lint/suspicious/noExplicitAny: tests read it freely
  readonly json: () => any;
}

/** What is sent with a request; a header that is undefined is left out, also one that is usually sent. */
export interface Asked {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string | undefined>>;
  readonly body?: string | Buffer;
}

/** A desk in a project of its own. */
export interface TestDesk {
  readonly base: string;
  readonly origin: string;
  readonly address: string;
  readonly port: number;
  readonly texts: Texts;
  /** What was told so far. */
  readonly told: readonly DeskNews[];
  readonly printed: readonly PrintAsk[];
  /** Paths that were to be made. */
  readonly visited: readonly string[];
  readonly token: string;
  readonly cookie: string;
  /** Asks as anybody may, with nothing but these headers. */
  readonly ask: (path: string, asked?: Asked) => Promise<Answer>;
  /** Asks as a page of the desk does. */
  readonly get: (path: string) => Promise<Answer>;
  readonly post: (path: string, body: object, headers?: Asked["headers"]) => Promise<Answer>;
  readonly close: () => Promise<void>;
}

/** Opens a desk with a kit, a class and settings, at a port that is free. */
export async function openTestDesk(parent = tmpdir()): Promise<TestDesk> {
  const base = mkdtempSync(join(parent, "leaflight-desk-"));
  const put = (path: string, text: string): void => {
    mkdirSync(dirname(join(base, path)), { recursive: true });
    writeFileSync(join(base, path), text);
  };
  put("content/kits/moon/index.md", MOON);
  put("content/kits/moon/moon.svg", "<svg/>");
  put("content/classes/evening/index.md", EVENING);
  put("content/classes/evening/books.csv", "seat,leaves\n1,180\n");
  put("content/classes/evening/other.csv", "seat,leaves\n");
  put("content/site.yaml", "title: Harbour\n");
  put("secret.txt", "secret");
  const news = new News();
  const told: DeskNews[] = [];
  news.listen((one) => told.push(one));
  const printed: PrintAsk[] = [];
  const visited: string[] = [];
  const state = emptyDesk("Harbour");
  const moon = {
    slug: "moon",
    title: "Moon",
    file: "content/kits/moon/index.md",
    draft: false,
    state: "fine",
  } as const;
  const listed = {
    messages: [],
    warnings: [],
    page: undefined,
    authorPage: undefined,
    cover: "/covers/moon?1",
    papers: [],
  };
  const desk: Desk = {
    base,
    news,
    bring: new BringRoom({ base, content: "content" }),
    texts: new Texts(base, news),
    files: new PageFiles(() => ({ words: ENGLISH, language: "en", title: "Harbour" })),
    drawing: new DrawingThread({ base, content: "content" }),
    state: () => ({ ...state, kits: [{ ...moon, ...listed }] }),
    site: () => "http://localhost:9",
    output: join(base, ".cache/serving"),
    print: (asked) => printed.push(asked),
    visit: async (path) => {
      visited.push(path);
    },
  };
  const open = await openDesk(desk, 20_000 + Math.floor(Math.random() * 20_000));
  const port = Number(new URL(open.origin).port);
  const ask: TestDesk["ask"] = (path, { method = "GET", headers = {}, body } = {}) =>
    new Promise((resolve, reject) => {
      const sent = Object.fromEntries(Object.entries(headers).filter(([, value]) => value !== undefined));
      const asked = request({
        agent: false,
        host: "127.0.0.1",
        port,
        path,
        method,
        headers: sent as Record<string, string>,
      });
      asked.once("error", reject);
      asked.once("response", (response) => {
        const parts: Buffer[] = [];
        response.on("data", (part: Buffer) => parts.push(part));
        response.once("end", () => {
          const text = Buffer.concat(parts).toString();
          resolve({ status: response.statusCode!, headers: response.headers, text, json: () => JSON.parse(text) });
        });
      });
      asked.end(body);
    });
  const opened = await ask(new URL(open.address).pathname + new URL(open.address).search);
  const cookie = String(opened.headers["set-cookie"]).split(";")[0]!;
  const get: TestDesk["get"] = (path) => ask(path, { headers: { cookie } });
  const { token } = (await get("/api/session")).json() as DeskSession;
  return {
    base,
    ...open,
    port,
    texts: desk.texts,
    told,
    printed,
    visited,
    token,
    cookie,
    ask,
    get,
    post: (path, body, headers = {}) => {
      const usual = { cookie, origin: open.origin, "content-type": "application/json", "x-leaflight-desk": token };
      return ask(path, { method: "POST", headers: { ...usual, ...headers }, body: JSON.stringify(body) });
    },
    close: async () => {
      await open.close();
      rmSync(base, { recursive: true, force: true });
    },
  };
}

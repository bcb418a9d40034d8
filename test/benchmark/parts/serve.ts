import { spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { commandWords } from "../../site/command.ts";
import type { Figure } from "../figure.ts";
import { middleAndMost } from "../numbers.ts";
import { idle } from "../process/idle.ts";
import { type StrangersSite, strangersSite } from "../process/strangers-site.ts";
import type { Scale } from "../scale.ts";
import { yardstick } from "../yardstick.ts";

/** Longest that a page is waited for, ms. */
const PATIENCE = 1_800_000;

/** How often it is asked for, ms. */
const POLLING = 20;

/** So often serving is started anew. */
const STARTS = 3;

/** From starting to a site and a desk that answer, and from saving a kit's file to its page and to the desk, with few kits and with many. */
export async function measureServe({ quick }: Scale): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const [count, changes] of quick
    ? ([[4, 3]] as const)
    : ([
        [4, 7],
        [100, 3],
      ] as const)) {
    const turn = yardstick();
    const site = strangersSite(count);
    try {
      const add = (line: `${"serve" | "desk" | "start"}-${typeof count}`, times: readonly number[]): void => {
        figures.push({ line, value: middleAndMost(times).median, yardstick: turn });
      };
      add(`start-${count}`, await timeStarts(site));
      const { pages, desk } = await timeChanges(site, changes);
      add(`serve-${count}`, pages);
      add(`desk-${count}`, desk);
    } finally {
      site.remove();
    }
  }
  return figures;
}

/** Seconds from each of some starts, with nothing kept of any kit, till catalogue and desk answer. */
async function timeStarts(site: StrangersSite): Promise<number[]> {
  const times: number[] = [];
  for (let i = 0; i < STARTS; i += 1) {
    rmSync(join(site.folder, ".cache/made"), { recursive: true, force: true });
    const start = performance.now();
    const served = await serve(site);
    await firstKits(served, site);
    await openDesk(served);
    times.push((performance.now() - start) / 1000);
    await served.stop();
  }
  return times;
}

/** Seconds from each of some changes to the page that has it, and to the desk; each begins when nothing of the last goes on. */
async function timeChanges(site: StrangersSite, changes: number): Promise<Record<"pages" | "desk", number[]>> {
  const served = await serve(site);
  try {
    await firstKits(served, site);
    const told = await openDesk(served);
    const times = { pages: [] as number[], desk: [] as number[] };
    for (let i = 0; i < changes; i += 1) {
      await idle(served.pid);
      const { page, text } = site.changeOne();
      const start = performance.now();
      const since = (): number => (performance.now() - start) / 1000;
      const heard = told().then(since);
      await pageWith(served.port, page, text);
      times.pages.push(since());
      times.desk.push(await heard);
    }
    return times;
  } finally {
    await served.stop();
  }
}

interface Served {
  readonly pid: number;
  readonly port: number;
  /** What a browser opens the desk by. */
  readonly desk: Promise<string>;
  readonly stop: () => Promise<void>;
}

async function serve(site: StrangersSite): Promise<Served> {
  const port = await freePort();
  const child = spawn(process.execPath, commandWords("src/build/start.ts", "--port", String(port)), {
    cwd: site.folder,
    stdio: ["ignore", "pipe", "ignore"],
  });
  const desk = Promise.withResolvers<string>();
  let said = "";
  child.stdout.on("data", (text: Buffer) => {
    said += text.toString();
    const address = /http:\/\/127\.0\.0\.1:\S+/.exec(said)?.[0];
    if (address !== undefined) desk.resolve(address);
  });
  const gone = new Promise((resolve) => child.once("exit", resolve));
  const stop = async (): Promise<void> => {
    child.kill();
    await gone;
  };
  return { pid: child.pid!, port, desk: desk.promise, stop };
}

/** Opens the desk as a browser does, till its list answers. Gives what waits for the next news of a text. */
async function openDesk({ desk }: Served): Promise<() => Promise<void>> {
  const address = await desk;
  const { origin } = new URL(address);
  const opened = await fetch(address, { redirect: "manual" });
  const cookie = opened.headers.getSetCookie()[0]!.split(";")[0]!;
  const ask = (path: string): Promise<Response> => fetch(origin + path, { headers: { cookie } });
  await (await ask("/api/state")).text();
  const news = (await ask("/api/news")).body!.pipeThrough(new TextDecoderStream()).getReader();
  return async () => {
    for (let heard = ""; !heard.includes('"news":"text"'); ) heard += (await news.read()).value ?? "";
  };
}

/** Waits for a catalogue that shows kits: before, it names them as still to be worked out. */
async function firstKits({ port }: Served, { strangers }: StrangersSite): Promise<void> {
  await pageWith(port, "index.html", `data-kit="${strangers[0]!.slug}"`);
}

async function pageWith(port: number, page: string, text: string): Promise<void> {
  const end = performance.now() + PATIENCE;
  while (performance.now() < end) {
    const found = await fetch(`http://localhost:${port}/${page}`).then(
      (answer) => answer.text(),
      () => "",
    );
    if (found.includes(text)) return;
    await wait(POLLING);
  }
  throw new Error(`${page} was never served with: ${text}`);
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, "localhost", () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
}

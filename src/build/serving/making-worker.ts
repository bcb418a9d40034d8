import { join } from "node:path";
import { parentPort, workerData } from "node:worker_threads";
import { once } from "../../core/lazily.ts";
import type { PrintAsk } from "../../input/desk/protocol.ts";
import { contentPath, readContentFrom } from "../../input/files/content-folder.ts";
import * as say from "../../words/messages.ts";
import { fixed } from "../../words/numbers.ts";
import { deskState } from "../desk/desk-state.ts";
import { tellFailure } from "../errors/command.ts";
import { foreseen } from "../errors/foreseen.ts";
import { programFault } from "../errors/program-fault.ts";
import { speakLent } from "../library/first-words.ts";
import { forgetCode } from "../store/code-keys.ts";
import { folderChanged, followFolders } from "../store/folder-key.ts";
import { changeOf, PAGE_CODE } from "./change.ts";
import { HowFar } from "./how-far.ts";
import type { Asked, Told, Workplace } from "./making-thread.ts";
import { type Follower, SiteMaker } from "./site-maker.ts";
import { unprintedPage } from "./unprinted-page.ts";
import { isVisitable } from "./visits.ts";

/** A thread that makes the site that is served, turn by turn, as it is told of changes. */
const { base, content, output, aside, words } = workerData as Workplace;
readContentFrom(content);
speakLent(base, words);
followFolders();
const maker = new SiteMaker({ base, output, aside });
/** Loaded when the first PDF is asked for: what writes PDFs takes its time to load. */
const press = once(async () => new (await import("./press-room.ts")).PressRoom(output));

/** What changed since the last turn began; undefined where nothing did. */
let news: readonly string[] | undefined;
let isBusy = false;
let isOld = false;

parentPort!.on("message", (asked: Asked) => {
  if (asked.ask === "print")
    return void print(asked.path).then((failure) => tell({ told: "printed", id: asked.id, failure }));
  if (asked.ask === "print all") return void printAll(asked.of);
  if (asked.ask === "visit") return void visit(asked.path).then(() => tell({ told: "visited", id: asked.id }));
  news = [...(news ?? []), ...asked.paths];
  if (!isBusy) void makeTurns();
});

function tell(told: Told): void {
  parentPort!.postMessage(told);
}

/** Gives a page that says why it cannot be printed; that is told on the terminal, too. */
async function print(path: string): Promise<string | undefined> {
  try {
    await visit(`/${path}`);
    if (maker.library) await (await press()).print(path, maker.library);
    return undefined;
  } catch (error) {
    const failure = foreseen(error) ?? programFault(error, base);
    console.error(failure);
    return unprintedPage(failure);
  }
}

/** Prints all of a kit or of a class, and tells how far that is. */
async function printAll(of: PrintAsk): Promise<void> {
  const far = new HowFar(of, (one) => tell({ told: "printing", news: one }));
  try {
    await visit(of.kind === "kit" ? `/kits/${of.slug}/packet-a4.pdf` : `/classes/${of.slug}/`);
    if (maker.library) await (await press()).printAll(of, maker.library, far.log);
    far.end();
  } catch (error) {
    const failure = foreseen(error) ?? programFault(error, base);
    console.error(failure);
    far.end(failure);
  }
}

/** Has made first what stands at a path below the site. */
async function visit(path: string): Promise<void> {
  if (isOld || !isVisitable(path)) return;
  const made = maker.visit(path);
  if (!isBusy) void makeTurns();
  await made;
}

async function makeTurns(): Promise<void> {
  isBusy = true;
  while ((news !== undefined || (maker.isVisited && maker.library)) && !isOld) {
    const paths = news;
    news = undefined;
    if (paths === undefined) await maker.serveVisits(follower);
    else await makeTurn(paths);
  }
  if (isOld) maker.dropVisits();
  isBusy = false;
}

const follower: Follower = {
  show: () => tell({ told: "shown" }),
  failed: (error) => {
    tellFailure(error);
    tell({ told: "failed", sentence: foreseen(error) ?? say.servingFailed() });
  },
  read: (library) => tell({ told: "state", state: deskState(library, library.waiting.kits.size > 0, maker.names) }),
  hasNews: () => news !== undefined,
};

async function makeTurn(paths: readonly string[]): Promise<void> {
  const began = performance.now();
  const kits = forget(paths);
  if (isOld) return console.warn(say.servingOld());
  try {
    const isWhole = await maker.turn(kits, follower);
    if (isWhole && paths.length > 0)
      console.log(say.servingFollowed({ seconds: fixed((performance.now() - began) / 1000, 1) }));
  } catch (error) {
    tell({ told: "nothing", code: tellFailure(error) });
  }
}

/** Forgets what is known of files that changed. Gives the kits in whose folders they lie. */
function forget(paths: readonly string[]): string[] {
  const kits = new Set<string>();
  for (const path of paths) {
    const change = changeOf(path, contentPath());
    if (change.kind === "program") isOld = true;
    if (change.kind === "scripts") forgetCode(join(import.meta.dirname, "../../..", PAGE_CODE));
    else folderChanged(change.kind === "kit" ? join(base, path) : undefined);
    if (change.kind === "kit") kits.add(change.slug);
  }
  return [...kits];
}

import { isOver, stateOf } from "../../core/class/class-state.ts";
import type { KitClass } from "../../core/class/kit-class.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { Story } from "../../core/story/story.ts";
import * as say from "../../words/messages.ts";
import { supplyCalled } from "../../words/supplies.ts";
import { atPlace } from "../files/at-place.ts";
import { foldersIn, openFolder, pathBelow } from "../files/folders.ts";
import { problem } from "../files/problem.ts";
import { type Readings, readListed } from "../files/readings.ts";
import { type Strays, straysIn } from "../files/strays.ts";
import { sheetsOf } from "../kit/resolve-window.ts";
import { readStory } from "../story/read-story.ts";
import { classData } from "./class-data.ts";
import { kitNamed, type OfferedKits } from "./kit-named.ts";
import { pricesOf } from "./prices.ts";
import { readSeats } from "./read-seats.ts";
import type { ClassMatter } from "./schema.ts";
import { defined } from "./seat-refit.ts";
import { stockOf } from "./stock.ts";
import { readClassFile } from "./taken-over.ts";

/** A class as its folder states it. */
export interface StatedClass {
  readonly plan: KitClass;
  readonly story: Story;
  readonly strays: readonly Strays[];
}

/** Reads every folder under `root` (…/classes), in the order of their days; a class that cannot be held stops none of the others. */
export function readClasses(root: string, base: string, kits: OfferedKits): Readings<StatedClass> {
  return readListed(
    () => foldersIn(root, base),
    (folder) => readClass(folder, base, kits),
  );
}

/** Reads a class's folder in the project `base`. @throws KitError with one message for each thing wrong. */
export function readClass(folder: string, base: string, kits: OfferedKits): StatedClass {
  const { slug, file } = openFolder(folder, base, "class");
  const home = pathBelow(base, folder);
  const { yaml, told } = readClassFile(folder, base);
  const data = classData(file, yaml);
  return atPlace(file, yaml, () => {
    const plan = toClass(slug, folder, base, data, kits);
    const story = readStory({ base, folder }, told.file, told.text);
    const { books } = data;
    const named = ["index.md", ...(books === undefined ? [] : [books]), ...story.pictures.map((photo) => photo.file)];
    return { plan, story, strays: straysIn(base, home, named) };
  });
}

function toClass(slug: string, folder: string, base: string, data: ClassMatter, all: OfferedKits): KitClass {
  const kits = data.kits.map((name, i) => kitNamed(name, all, ["kits", i]));
  checkDays(data);
  const seats = readSeats(pathBelow(base, folder), base, data, kits);
  const sheets = sheetsOf(data.sheets, data.units);
  const state = stateOf(data.state, seats.seats.length, seats.awaiting.length);
  return {
    slug,
    title: data.title,
    summary: data.summary ?? "",
    date: data.date,
    announced: data.announced,
    place: data.place,
    units: data.units,
    paper: data.paper,
    kits,
    state,
    ...seats,
    // Nobody waits for a book once the class is over.
    awaiting: isOver(state) ? [] : seats.awaiting,
    sessions: sessionsOf(data),
    tools: data.tools,
    pace: data.pace,
    ready: data.ready,
    fittingShare: data.fittingShare,
    sheets,
    waste: data.waste,
    ...pricesOf(data, sheets),
    currency: data.currency ?? "",
    stock: data.stock.map(stockOf),
    spares: data.spares.map(({ label, book }) => ({ label, book: defined(book) as Refit })),
    bring: data.bring,
    brought: data.bring.flatMap((item) => supplyCalled(item) ?? []),
    packet: data.packet,
  };
}

function sessionsOf({ date, sessions }: ClassMatter): KitClass["sessions"] {
  return sessions.map((session, i) => ({
    title: session.title ?? (sessions.length === 1 ? say.frontTheSession() : say.frontSession({ number: i + 1 })),
    date: session.date ?? (i === 0 ? date : undefined),
    starts: session.starts,
    minutes: session.minutes,
    aside: session.aside,
    buffer: session.buffer,
  }));
}

/** @throws ProblemError where a session stands before the one that it follows, or the class is announced after its day. */
function checkDays(data: ClassMatter): void {
  let before = data.date;
  if (data.announced !== undefined && data.announced > data.date)
    throw problem(["announced"], {
      given: say.checkGiven({ value: data.announced }),
      allowed: say.frontAnnouncedBefore({ date: data.date }),
      remedy: say.frontCorrectAnnounced(),
    });
  for (const [i, { date }] of data.sessions.entries()) {
    if (date === undefined) continue;
    if (date < before)
      throw problem(["sessions", i, "date"], {
        given: say.checkGiven({ value: date }),
        allowed: say.frontSessionBefore({ date: before }),
        remedy: say.frontOrderSessions(),
      });
    before = date;
  }
}

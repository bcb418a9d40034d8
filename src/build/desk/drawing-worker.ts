import { join } from "node:path";
import { parentPort, workerData } from "node:worker_threads";
import type { PictureAsk } from "../../input/desk/protocol.ts";
import { contentPath, readContentFrom } from "../../input/files/content-folder.ts";
import { foreseen } from "../errors/foreseen.ts";
import { programFault } from "../errors/program-fault.ts";
import { speakFirst } from "../library/first-words.ts";
import { Gathering } from "../library/gathering.ts";
import { readFacts, type SiteFacts } from "../library/site-facts.ts";
import { Store } from "../store/store.ts";
import { drawPicture } from "./draw-picture.ts";
import type { Drawer, DrawerName, DrawingAsked, DrawingTold, DrawingWorkplace } from "./drawing-thread.ts";

/** A thread that draws for the desk, one thing after the other, so that requests are answered meanwhile. */
const { base, content } = workerData as DrawingWorkplace;
readContentFrom(content);
speakFirst(base);

/** What all kits share, read again when something of it changed. */
let facts: SiteFacts | undefined;

/** What is drawn, by the name of what is asked. */
const DRAWERS: Readonly<Record<DrawerName, Drawer>> = {
  picture: (what, ...more) => drawPicture(what as PictureAsk, ...more),
};

parentPort!.on("message", (asked: DrawingAsked) => {
  if (asked.ask === "forget") facts = undefined;
  else parentPort!.postMessage(told(asked));
});

function told({ id, by, what }: Extract<DrawingAsked, { readonly ask: "draw" }>): DrawingTold {
  try {
    facts ??= readFacts(base, new Gathering("leave out"), new Store());
    return { id, answer: DRAWERS[by](what, facts, join(base, contentPath("kits"))) };
  } catch (error) {
    return { id, failure: foreseen(error) ?? programFault(error, base) };
  }
}

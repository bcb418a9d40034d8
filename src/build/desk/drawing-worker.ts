import { join } from "node:path";
import { parentPort, workerData } from "node:worker_threads";
import { contentPath, readContentFrom } from "../../input/files/content-folder.ts";
import { foreseen } from "../errors/foreseen.ts";
import { programFault } from "../errors/program-fault.ts";
import { speakFirst } from "../library/first-words.ts";
import { Gathering } from "../library/gathering.ts";
import { readFacts, type SiteFacts } from "../library/site-facts.ts";
import { Store } from "../store/store.ts";
import type { Numbered, ThreadAnswer, ThreadPlace } from "./asked-thread.ts";
import { drawPicture } from "./draw-picture.ts";
import type { DrawingNews, DrawingQuestion } from "./drawing-thread.ts";

/** A thread that draws for the desk, one thing after the other, so that requests are answered meanwhile. */
const { base, content } = workerData as ThreadPlace;
readContentFrom(content);
speakFirst(base);

/** What all kits share, read again when something of it changed. */
let facts: SiteFacts | undefined;

parentPort!.on("message", (asked: Numbered<DrawingQuestion> | DrawingNews) => {
  if ("forget" in asked) facts = undefined;
  else parentPort!.postMessage(answered(asked));
});

function answered({ id, draw }: Numbered<DrawingQuestion>): ThreadAnswer {
  try {
    facts ??= readFacts(base, new Gathering("leave out"), new Store());
    return { id, answer: drawPicture(draw, facts, join(base, contentPath("kits"))) };
  } catch (error) {
    return { id, failure: foreseen(error) ?? programFault(error, base) };
  }
}

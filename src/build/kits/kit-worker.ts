import { parentPort, workerData } from "node:worker_threads";
import sharp from "sharp";
import { readContentFrom } from "../../input/files/content-folder.ts";
import { KitError } from "../../input/files/message.ts";
import { BuildError } from "../errors/build-error.ts";
import { speakLent } from "../library/first-words.ts";
import { Gathering } from "../library/gathering.ts";
import { readFacts } from "../library/site-facts.ts";
import { Store } from "../store/store.ts";
import type { Answer, Asked, Workplace } from "./crew-member.ts";
import { KitMaker } from "./kit-maker.ts";

/** A thread that reads and makes kits of one site, one thing after the other as it is asked. */
const { base, content, words } = workerData as Workplace;
// Each thread draws by itself, and no picture is drawn twice.
sharp.cache(false);
sharp.concurrency(1);
speakLent(base, words);
readContentFrom(content);
const store = new Store();
const maker = new KitMaker(readFacts(base, new Gathering("leave out"), store), store);

parentPort!.on("message", (asked: Asked) => {
  void answerTo(asked).then((answer) => parentPort!.postMessage(answer));
});

async function answerTo(asked: Asked): Promise<Answer> {
  try {
    if (asked.ask === "read") return { done: await maker.read(asked.folders) };
    if (asked.ask === "make") return { done: await maker.make(asked.tasks) };
    return { done: store.used() };
  } catch (fault) {
    if (fault instanceof KitError) return { messages: fault.messages };
    if (fault instanceof BuildError) return { refused: fault.message };
    const { code, path, syscall, errno } = fault as NodeJS.ErrnoException;
    return { fault, system: { code, path, syscall, errno } };
  }
}

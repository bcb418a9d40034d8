import { parentPort, workerData } from "node:worker_threads";
import { readContentFrom } from "../../input/files/content-folder.ts";
import { KitError } from "../../input/files/message.ts";
import { speakFirst } from "../library/first-words.ts";
import { Gathering } from "../library/gathering.ts";
import { readFacts } from "../library/site-facts.ts";
import { Store } from "../store/store.ts";
import type { Answer, Asked, Workplace } from "./crew-member.ts";
import { KitMaker } from "./kit-maker.ts";

/** A thread that reads and makes kits of one site, one thing after the other as it is asked. */
const { base, content } = workerData as Workplace;
speakFirst(base);
readContentFrom(content);
const store = new Store();
const maker = new KitMaker(readFacts(base, new Gathering("leave out")), store);

parentPort!.on("message", (asked: Asked) => {
  void answerTo(asked).then((answer) => parentPort!.postMessage(answer));
});

async function answerTo(asked: Asked): Promise<Answer> {
  try {
    if (asked.ask === "read") return { done: await maker.read(asked.folders) };
    if (asked.ask === "make") return { done: await maker.make(asked.tasks) };
    return { done: store.used() };
  } catch (fault) {
    return fault instanceof KitError ? { messages: fault.messages } : { fault };
  }
}

import { parentPort, workerData } from "node:worker_threads";
import { readContentFrom } from "../../input/files/content-folder.ts";
import { ownFonts } from "../../input/fonts/own-fonts.ts";
import { holdPixels } from "../../input/raster/read-pixels.ts";
import { readSettings } from "../../input/settings/read-settings.ts";
import { programFault } from "../errors/program-fault.ts";
import { speakFirst } from "../library/first-words.ts";
import type { BringAnswer, BringAsk, BringPlace } from "./bring-room.ts";
import { BringWork } from "./bring-work.ts";

/** A thread that looks at pictures which are brought to the desk: a large one takes a moment, and a bad one may take long. */
const { base, content } = workerData as BringPlace;
readContentFrom(content);
speakFirst(base);
holdPixels(2);
const work = new BringWork(base, () => ownFonts(base, readSettings(base, undefined).fonts));

parentPort!.on("message", (asked: BringAsk) => void answer(asked));

async function answer(asked: BringAsk): Promise<void> {
  const { id } = asked;
  try {
    tell({ id, answer: await answerTo(asked) });
  } catch (error) {
    tell({ id, fault: programFault(error, base) });
  }
}

function answerTo(asked: BringAsk): unknown {
  switch (asked.ask) {
    case "bring":
      return work.bring(asked.name, asked.bytes);
    case "seen":
      return work.seen(asked.upload);
    case "look":
      return work.look(asked.form);
    case "make":
      return work.make(asked.form);
    case "icons":
      return work.icons(asked.word);
  }
}

function tell(told: BringAnswer): void {
  parentPort!.postMessage(told);
}

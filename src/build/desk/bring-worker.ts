import { parentPort, workerData } from "node:worker_threads";
import { readContentFrom } from "../../input/files/content-folder.ts";
import { ownFonts } from "../../input/fonts/own-fonts.ts";
import { holdPixels } from "../../input/raster/read-pixels.ts";
import { readSettings } from "../../input/settings/read-settings.ts";
import { foreseen } from "../errors/foreseen.ts";
import { programFault } from "../errors/program-fault.ts";
import { speakFirst } from "../library/first-words.ts";
import type { Numbered, ThreadAnswer, ThreadPlace } from "./asked-thread.ts";
import type { BringQuestion } from "./bring-room.ts";
import { BringWork } from "./bring-work.ts";

/** A thread that looks at pictures which are brought to the desk: a large one takes a moment, and a bad one may take long. */
const { base, content } = workerData as ThreadPlace;
readContentFrom(content);
speakFirst(base);
holdPixels(2);
const work = new BringWork(base, () => ownFonts(base, readSettings(base, undefined).fonts));

parentPort!.on("message", (asked: Numbered<BringQuestion>) => void answer(asked));

async function answer(asked: Numbered<BringQuestion>): Promise<void> {
  const { id } = asked;
  try {
    tell({ id, answer: await answerTo(asked) });
  } catch (error) {
    tell({ id, failure: foreseen(error) ?? programFault(error, base) });
  }
}

function answerTo(asked: BringQuestion): unknown {
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

function tell(told: ThreadAnswer): void {
  parentPort!.postMessage(told);
}

import { join } from "node:path";
import { readWords } from "../src/input/words/read-words.ts";
import { speak } from "../src/words/speak.ts";

/** Tests read English. */
speak(readWords(join(import.meta.dirname, ".."), "en"), "en");

import { join } from "node:path";
import { readWords } from "../src/input/words/read-words.ts";

/** The English words, read once for all test files of a process. */
export const ENGLISH = readWords(join(import.meta.dirname, ".."), "en");

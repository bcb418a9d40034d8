import { speak } from "../src/words/speak.ts";
import { ENGLISH } from "./english-words.ts";

/** Tests read English. */
speak(ENGLISH, "en");

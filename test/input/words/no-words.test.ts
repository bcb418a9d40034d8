import { describe, expect, it } from "vitest";
import { readWords } from "../../../src/input/words/read-words.ts";
import { formatWordsMessage, WordsError } from "../../../src/input/words/words-error.ts";
import { inFolder } from "../kit/kit-folders.ts";

describe("readWords(base, language)", () => {
  it("says in words of its own that the program's words are missing", () => {
    const told = inFolder((base) => {
      try {
        readWords(base, "en");
        return [];
      } catch (error) {
        if (!(error instanceof WordsError)) throw error;
        return error.messages.map(formatWordsMessage);
      }
    });
    expect(told).toEqual([expect.stringMatching(/^content\/words\/en {2}words: no words there; allowed: .*; do: .*/)]);
  });
});

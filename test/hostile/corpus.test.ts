import { platform } from "node:os";
import { afterAll, describe, expect, it } from "vitest";
import { formatMessage } from "../../src/input/files/format-message.ts";
import type { KitMessage } from "../../src/input/files/message.ts";
import { speak } from "../../src/words/speak.ts";
import { ENGLISH } from "../english-words.ts";
import { HOSTILE } from "./corpus.ts";
import { inspect } from "./inspect.ts";
import { inProject } from "./project.ts";
import type { HostileCase } from "./sound.ts";

/** Windows has no pipes among files, and links only for administrators. */
const possible = ({ files }: HostileCase): boolean =>
  platform() !== "win32" ||
  !Object.values(files).some((content) => content === "fifo" || (typeof content === "object" && "link" in content));

/** What no message holds: another's file, a place in the program, what the program stumbled over. */
const NEVER = /hunter2|\bat \S+ \(|\.ts:\d|Maximum call stack|TypeError|RangeError|\[object|\bundefined\b|\bNaN\b/;

/** Letters of a message that one can still read. */
const MOST_LETTERS = 2500;

function faultsOf(message: KitMessage): string[] {
  const { file, field, given, allowed, remedy } = message;
  const line = formatMessage(message);
  return [
    ...Object.entries({ file, field, given, allowed, remedy }).flatMap(([name, text]) =>
      text.trim() === "" ? [`no ${name}`] : [],
    ),
    ...(NEVER.test(line) ? [line.slice(0, 300)] : []),
    ...(line.length > MOST_LETTERS ? [`${line.length} letters: ${line.slice(0, 200)}`] : []),
    ...(/\p{Cc}/u.test(line) ? [`a control character in ${JSON.stringify(line.slice(0, 200))}`] : []),
  ];
}

describe("a hostile project", () => {
  afterAll(() => speak(ENGLISH, "en"));

  it("stands under a name of its own", () => {
    const names = HOSTILE.map(({ name }) => name);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    expect(names.length).toBeGreaterThan(300);
  });

  it.each(HOSTILE.filter(possible))(
    "is told of or built, and nothing else: $name",
    async ({ files, expect: outcome, says }) => {
      const messages = await inProject(files, inspect);
      expect(messages.flatMap(faultsOf)).toEqual([]);
      const lines = messages.map(formatMessage);
      if (outcome === "built") expect(lines).toEqual([]);
      else expect(lines.length).toBeGreaterThan(0);
      if (says) expect(lines.join("\n")).toMatch(says);
    },
  );
});

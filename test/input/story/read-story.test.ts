import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Story } from "../../../src/core/story/story.ts";
import { type Problem, ProblemError } from "../../../src/input/files/problem.ts";
import { readStory } from "../../../src/input/story/read-story.ts";
import { inFolder } from "../kit/kit-folders.ts";

/** How every JPEG file begins (ITU-T T.81, SOI and APP0). */
const JPEG = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0]);

const FILE = "content/kits/moon/index.md";

/** Reads a text below a front matter of three lines, in a folder with these photos. */
function read(body: string, photos: readonly string[] = []): Story {
  return inFolder((folder) => {
    for (const photo of photos) {
      const path = join(folder, "content/kits/moon", photo);
      mkdirSync(join(path, ".."), { recursive: true });
      writeFileSync(path, photo.endsWith(".txt") ? "a text" : JPEG);
    }
    return readStory(
      { base: folder, folder: join(folder, "content/kits/moon") },
      FILE,
      `---\ntitle: Moon\n---\n${body}`,
    );
  });
}

function problemsOf(body: string, photos?: readonly string[]): readonly Problem[] {
  try {
    read(body, photos);
    return [];
  } catch (error) {
    if (error instanceof ProblemError) return error.problems;
    throw error;
  }
}

describe("readStory(folder, file, text)", () => {
  it("keeps the text below the front matter, also with Windows line ends", () => {
    expect(read("One.\n\nTwo.\n").markdown).toBe("One.\n\nTwo.\n");
    const windows = inFolder((folder) =>
      readStory({ base: folder, folder }, FILE, "---\r\ntitle: Moon\r\n---\r\nOne.\r\nTwo.\r\n"),
    );
    expect(windows.markdown).toBe("One.\nTwo.\n");
  });

  it("names each picture once, with its line, also in folders and with spaces", () => {
    const body =
      'Look:\n![lamp](lamp.jpg)\n\n- ![](<the quay.png> "Dusk")\n- ![again](lamp.jpg)\n\n![far](films/a.webp)\n';
    const { pictures } = read(body, ["lamp.jpg", "the quay.png", "films/a.webp"]);
    expect(pictures.map(({ file }) => file)).toEqual(["lamp.jpg", "the quay.png", "films/a.webp"]);
    expect(pictures.map(({ line }) => line)).toEqual([8, 7, 10]);
  });

  it("names each link with its line, also those by reference", () => {
    const { links } = read("One [a](/kits/gull/)\nand [b][far].\n\n[far]: https://example.org\n");
    expect(links).toEqual([
      { target: "/kits/gull/", line: 4 },
      { target: "https://example.org", line: 5 },
    ]);
  });

  it.each([
    ["![x](https://example.org/x.png)", /from elsewhere: https:\/\/example.org\/x.png/],
    ["![x](//example.org/x.png)", /from elsewhere/],
    ["![x](data:image/png;base64,AAAA)", /from elsewhere/],
    ["![x](file:///etc/hosts)", /from elsewhere/],
    ["![x](../other/lamp.jpg)", /outside its folder/],
    ["![x](gone.jpg)", /"gone.jpg" is not there/],
    ["![x](notes.txt)", /"notes.txt": a file of another kind/],
    ["![x](the quay.png)", /given !\[x\]\(the quay.png\)/],
  ])("tells of %s, with its line", (markdown, given) => {
    const [problem, ...others] = problemsOf(`First.\n\n${markdown}\n`, ["notes.txt", "the quay.png"]);
    expect(others).toEqual([]);
    expect(problem!.given).toMatch(given);
    expect(problem!.at).toMatchObject({ file: FILE, line: 6 });
  });

  it("tells of all pictures at once", () => {
    expect(problemsOf("![a](a.jpg)\n![b](b.jpg) ![c](http://c/c.png)\n")).toHaveLength(3);
  });
});

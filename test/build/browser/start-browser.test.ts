import { readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BrowserError } from "../../../src/build/browser/browser-error.ts";
import { startBrowser } from "../../../src/build/browser/start-browser.ts";
import { statedVersion } from "../../../src/build/browser/stated-version.ts";
import { ownName } from "../../../src/build/making/owner.ts";
import { type FakeBrowsers, fakeBrowsers } from "./fake-browser.ts";
import { processesWith } from "./processes.ts";

const SHORT = { start: 1500, answer: 1500 };

describe.skipIf(process.platform === "win32")("a program that is no browser", () => {
  let fakes: FakeBrowsers;
  beforeAll(() => {
    fakes = fakeBrowsers();
  });
  afterAll(() => fakes.remove());

  const start = (path: string): Promise<unknown> => startBrowser({ path, source: "setting" }, () => undefined, SHORT);

  for (const [what, lines, words] of [
    ["ends at once", "echo 'cannot open display' >&2; exit 3", /did not start \(code 3: cannot open display\)/],
    ["is killed", "kill -9 $$", /did not start \(SIGKILL\)/],
    ["never answers", "sleep 600", /did not start within 1\.5 seconds/],
    ["is stopped", "kill -STOP $$", /did not start within 1\.5 seconds/],
    ["hides what it started", "sleep 600 & sleep 600", /did not start within/],
    ["answers with something else", "echo nonsense >&4; printf 'more\\0' >&4; sleep 600", /no message of a browser/],
    ["answers without an end", "cat /dev/zero | tr '\\0' 'a' >&4", /did not start/],
  ] as const) {
    it(`that ${what} is told in one message and leaves nothing behind`, async () => {
      const path = fakes.script(what.replaceAll(" ", "-"), lines);
      const refused = start(path);
      await expect(refused).rejects.toBeInstanceOf(BrowserError);
      await expect(refused).rejects.toThrow(words);
      await expect(refused).rejects.toThrow(path);
      await expect(refused).rejects.toThrow("LEAFLIGHT_BROWSER");
      expect(readdirSync(tmpdir()).filter((name) => name.startsWith(`leaflight-${ownName()}`))).toEqual([]);
      if (process.platform === "linux") expect(processesWith(path)).toEqual([]);
    });
  }

  it("that may not be run, or is not there, is told with the system's word for it", async () => {
    await expect(start(fakes.script("plain", "", 0o644))).rejects.toThrow(/EACCES/);
    await expect(start(join(fakes.folder, "missing"))).rejects.toThrow(/ENOENT/);
  });

  it("is told apart by what it states, or by its file where it states nothing in time", async () => {
    expect(await statedVersion(fakes.script("versed", "echo Chromium 147.0.1; sleep 600 &"))).toBe("Chromium 147.0.1");
    expect(await statedVersion(fakes.script("mute", "exit 1"))).toMatch(/^file \d+ \d+$/);
  });
});

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";

/** What stands on the pretended machine. Paths of the test's own folder are real. */
const machine = vi.hoisted(() => ({ files: new Set<string>(), downloaded: "", real: "" }));

vi.mock("node:fs", async (original) => {
  const real = await original<typeof import("node:fs")>();
  const existsSync = (path: string): boolean =>
    machine.real !== "" && path.startsWith(machine.real) ? real.existsSync(path) : machine.files.has(path);
  return { ...real, existsSync };
});
vi.mock("puppeteer", () => ({
  default: {
    executablePath: () => {
      if (machine.downloaded === "") throw new Error("Could not find Chrome");
      return machine.downloaded;
    },
  },
}));
vi.mock("../../../src/build/browser/packaged.ts", () => ({
  PACKAGED_VERSION: "1.2.3",
  unpackBrowser: async () => "/packaged/chromium",
}));

const { findBrowser } = await import("../../../src/build/browser/find-browser.ts");

describe("findBrowser", () => {
  let folder: string;
  let setting: string;
  const architecture = process.arch;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "leaflight-browser-"));
    setting = join(folder, "own-chrome");
    writeFileSync(setting, "");
    machine.real = folder;
    machine.files = new Set();
    machine.downloaded = "";
  });
  afterEach(() => {
    rmSync(folder, { recursive: true });
    Object.defineProperty(process, "arch", { value: architecture });
  });
  const pretend = (arch: string): unknown => Object.defineProperty(process, "arch", { value: arch });

  it("takes the setting before all others", async () => {
    machine.files.add("/usr/bin/chromium").add("/cache/chrome");
    machine.downloaded = "/cache/chrome";
    expect(await findBrowser({ LEAFLIGHT_BROWSER: setting }, "linux")).toEqual({ path: setting, source: "setting" });
  });

  it("refuses a setting that names no file, and names both", async () => {
    machine.files.add("/usr/bin/chromium");
    const missing = join(folder, "not-here");
    const refused = findBrowser({ LEAFLIGHT_BROWSER: missing }, "linux");
    await expect(refused).rejects.toThrow(missing);
    await expect(refused).rejects.toThrow("LEAFLIGHT_BROWSER");
  });

  it("takes an empty setting for none", async () => {
    machine.files.add("/usr/bin/chromium");
    expect((await findBrowser({ LEAFLIGHT_BROWSER: "" }, "linux")).source).toBe("installed");
  });

  it("takes an installed browser before a downloaded one", async () => {
    machine.files.add("/usr/bin/chromium").add("/cache/chrome");
    machine.downloaded = "/cache/chrome";
    expect(await findBrowser({}, "linux")).toEqual({ path: "/usr/bin/chromium", source: "installed" });
  });

  it("looks where each system installs", async () => {
    const usual = {
      linux: "/usr/bin/google-chrome",
      darwin: "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
      win32: "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    };
    machine.files = new Set(Object.values(usual));
    for (const [platform, path] of Object.entries(usual))
      expect(await findBrowser({}, platform)).toEqual({ path, source: "installed" });
  });

  it("takes a downloaded browser before the packaged one, if its file is there", async () => {
    pretend("x64");
    machine.downloaded = "/cache/chrome";
    expect((await findBrowser({}, "linux")).source).toBe("packaged");
    machine.files.add("/cache/chrome");
    expect(await findBrowser({}, "linux")).toEqual({ path: "/cache/chrome", source: "downloaded" });
  });

  it("takes the packaged browser last, on Linux on x64 only", async () => {
    pretend("x64");
    expect(await findBrowser({}, "linux")).toEqual({ path: "/packaged/chromium", source: "packaged" });
    await expect(findBrowser({}, "darwin")).rejects.toThrow();
    pretend("arm64");
    await expect(findBrowser({}, "linux")).rejects.toThrow();
  });

  it("says what to do where there is none", async () => {
    for (const platform of ["darwin", "win32", "aix"]) {
      const refused = findBrowser({}, platform);
      await expect(refused).rejects.toThrow(/install Chrome or Chromium/);
      await expect(refused).rejects.toThrow(/LEAFLIGHT_BROWSER/);
    }
  });
});

import { describe, expect, it } from "vitest";
import { findBrowser, type Machine } from "../../../src/build/browser/find-browser.ts";
import "../../english.ts";

/** What stands on a pretended machine: one with Linux on x64, without any browser but the packaged one, unless said otherwise. */
interface Pretended extends Partial<Pick<Machine, "platform" | "architecture">> {
  readonly files?: readonly string[];
  readonly downloaded?: string;
}

function pretended({ platform = "linux", architecture = "x64", files = [], downloaded }: Pretended): Machine {
  return {
    platform,
    architecture,
    exists: (path) => files.includes(path),
    downloaded: () => {
      if (downloaded === undefined) throw new Error("Could not find Chrome");
      return downloaded;
    },
    unpack: async () => "/packaged/chromium",
  };
}

const SETTING = "/home/harbour/own-chrome";

describe("findBrowser(environment, machine)", () => {
  it("takes the setting before all others", async () => {
    const machine = pretended({ files: [SETTING, "/usr/bin/chromium", "/cache/chrome"], downloaded: "/cache/chrome" });
    expect(await findBrowser({ LEAFLIGHT_BROWSER: SETTING }, machine)).toEqual({ path: SETTING, source: "setting" });
  });

  it("refuses a setting that names no file, and names both", async () => {
    const refused = findBrowser({ LEAFLIGHT_BROWSER: SETTING }, pretended({ files: ["/usr/bin/chromium"] }));
    await expect(refused).rejects.toThrow(SETTING);
    await expect(refused).rejects.toThrow("LEAFLIGHT_BROWSER");
  });

  it("takes an empty setting for none", async () => {
    const machine = pretended({ files: ["/usr/bin/chromium"] });
    expect((await findBrowser({ LEAFLIGHT_BROWSER: "" }, machine)).source).toBe("installed");
  });

  it("takes an installed browser before a downloaded one", async () => {
    const machine = pretended({ files: ["/usr/bin/chromium", "/cache/chrome"], downloaded: "/cache/chrome" });
    expect(await findBrowser({}, machine)).toEqual({ path: "/usr/bin/chromium", source: "installed" });
  });

  it("looks where each system installs", async () => {
    const usual = {
      linux: "/usr/bin/google-chrome",
      darwin: "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
      win32: "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    };
    for (const [platform, path] of Object.entries(usual))
      expect(await findBrowser({}, pretended({ platform, files: Object.values(usual) }))).toEqual({
        path,
        source: "installed",
      });
  });

  it("takes a downloaded browser before the packaged one, if its file is there", async () => {
    const downloaded = "/cache/chrome";
    expect((await findBrowser({}, pretended({ downloaded }))).source).toBe("packaged");
    const there = pretended({ downloaded, files: [downloaded] });
    expect(await findBrowser({}, there)).toEqual({ path: downloaded, source: "downloaded" });
  });

  it("takes the packaged browser last, on Linux on x64 only", async () => {
    expect(await findBrowser({}, pretended({}))).toEqual({ path: "/packaged/chromium", source: "packaged" });
    await expect(findBrowser({}, pretended({ platform: "darwin" }))).rejects.toThrow();
    await expect(findBrowser({}, pretended({ architecture: "arm64" }))).rejects.toThrow();
  });

  it("says what to do where there is none", async () => {
    for (const platform of ["darwin", "win32", "aix"]) {
      const refused = findBrowser({}, pretended({ platform }));
      await expect(refused).rejects.toThrow(/install Chrome or Chromium/);
      await expect(refused).rejects.toThrow(/LEAFLIGHT_BROWSER/);
    }
  });
});

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { folderChanged, folderKey, followFolders, isStill } from "../../../src/build/store/folder-key.ts";

const folder = mkdtempSync(join(tmpdir(), "leaflight-followed-"));
let end: () => void;
afterAll(() => {
  end();
  rmSync(folder, { recursive: true });
});

const kit = join(folder, "kits/moon");

function write(text: string): void {
  mkdirSync(kit, { recursive: true });
  writeFileSync(join(kit, "index.md"), text);
}

describe("a folder that is followed", () => {
  it("keeps its key until it is told to have changed, in it or above it", () => {
    write("one");
    const unfollowed = folderKey(kit, folder);
    write("two");
    expect(folderKey(kit, folder)).not.toBe(unfollowed);
    end = followFolders();
    const two = folderKey(kit, folder);
    write("three");
    expect(folderKey(kit, folder)).toBe(two);
    folderChanged(join(folder, "kits/gull/index.md"));
    folderChanged(join(folder, "kits/moonlight"));
    expect(folderKey(kit, folder)).toBe(two);
    folderChanged(join(kit, "index.md"));
    const three = folderKey(kit, folder);
    expect(three).not.toBe(two);
    write("four");
    folderChanged(folder);
    const four = folderKey(kit, folder);
    expect(four).not.toBe(three);
    write("five");
    folderChanged();
    expect(folderKey(kit, folder)).not.toBe(four);
  });

  it("says once when it is not what it was named for", () => {
    write("one");
    folderChanged();
    folderKey(kit, folder);
    expect(isStill(kit, folder)).toBe(true);
    write("two");
    expect(isStill(kit, folder)).toBe(false);
    expect(isStill(kit, folder)).toBe(true);
  });
});

import { describe, expect, it } from "vitest";
import { absentAddress, addressOf, askedPage, keptAddress, kitOf, pathIn } from "../../../src/page/offline/paths.ts";

const SITE = "https://library.example/workshop/";

describe("pathIn(site, address)", () => {
  it.each([
    ["", "index.html"],
    ["index.html", "index.html"],
    ["?height=210", "index.html"],
    ["kits/gull/", "kits/gull/index.html"],
    ["kits/gull", "kits/gull"],
    ["kits/gull/index.html?height=210#book", "kits/gull/index.html"],
    ["kits/gull/photos/a%20b.webp", "kits/gull/photos/a b.webp"],
    ["kits/gull/100%", "kits/gull/100%"],
    ["../elsewhere/index.html", undefined],
    ["https://other.example/workshop/index.html", undefined],
    ["/workshop-two/index.html", undefined],
  ])("%s: %s", (address, path) => {
    expect(pathIn(SITE, new URL(address, SITE).href)).toBe(path);
  });
});

describe("kitOf(path)", () => {
  it.each([
    ["kits/little-gull/index.html", "little-gull"],
    ["kits/little-gull/cut/door-mm.svg", "little-gull"],
    ["kits/little-gull", undefined],
    ["index.html", undefined],
    ["old/kits/gull/index.html", undefined],
  ])("%s: %s", (path, kit) => {
    expect(kitOf(path)).toBe(kit);
  });
});

describe("addressOf(site, path), keptAddress(site, path, name)", () => {
  it.each(["kits/gull/index.html", "kits/gull/photos/a b#1?.webp"])("leads back to %s", (path) => {
    expect(pathIn(SITE, addressOf(SITE, path))).toBe(path);
    expect(pathIn(SITE, keptAddress(SITE, path, "0f3a"))).toBe(path);
  });

  it("stands for one content", () => {
    expect(keptAddress(SITE, "a.css", "1")).not.toBe(keptAddress(SITE, "a.css", "2"));
  });
});

describe("absentAddress(site, path), askedPage(search)", () => {
  it("names the page that was asked for", () => {
    const { search } = new URL(absentAddress(SITE, "kits/gull/bench/index.html"));
    expect(askedPage(search)).toBe("kits/gull/bench/index.html");
  });

  it.each([
    "",
    "?page=",
    "?page=javascript:alert(1)",
    "?page=//other.example/",
    "?page=/etc",
    "?page=../x",
    "?page=a//b",
  ])("takes nothing that leads elsewhere: %s", (search) => {
    expect(askedPage(search)).toBeUndefined();
  });
});

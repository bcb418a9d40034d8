import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { ALLOWED_LICENCES, isAllowed } from "../../../src/build/licences/allowed.ts";
import { packageLicence } from "../../../src/build/licences/package-licence.ts";
import { packagesOf } from "../../../src/build/licences/reached.ts";
import { licencesText, writeLicences } from "../../../src/build/licences/write-licences.ts";

let base: string;

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-licences-"));
});

afterEach(() => {
  rmSync(base, { recursive: true, force: true });
});

/** Installs a package below the base; gives back its folder. */
function install(name: string, license: unknown, files: Readonly<Record<string, string>>): string {
  const folder = join(base, "node_modules", name);
  for (const [path, text] of Object.entries({
    "package.json": JSON.stringify({ name, version: "1.2.3", license }),
    ...files,
  })) {
    mkdirSync(join(folder, path, ".."), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

describe("isAllowed(expression)", () => {
  it.each([
    "MIT",
    "OFL-1.1",
    "(MIT OR GPL-3.0-only)",
    "MIT OR Apache-2.0",
    "MIT AND ISC",
    "GPL-2.0-only OR MIT AND ISC",
  ])("takes %s", (expression) => {
    expect(isAllowed(expression)).toBe(true);
  });

  it.each(["", "GPL-3.0-only", "MIT AND GPL-3.0-only", "UNLICENSED", "SEE LICENSE IN X", "mit"])(
    "takes no %j",
    (expression) => {
      expect(isAllowed(expression)).toBe(false);
    },
  );

  // The SPDX licence list 3.27, as the npm package spdx-license-ids 3.0.24 has it.
  it("knows licences by the identifiers of SPDX", () => {
    const spdx = ["0BSD", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "BSL-1.0", "BlueOak-1.0.0", "CC0-1.0", "ISC"];
    expect(ALLOWED_LICENCES.toSorted()).toEqual([...spdx, "MIT", "OFL-1.1", "Python-2.0", "Unlicense"].toSorted());
  });
});

describe("packageLicence(folder)", () => {
  it("reads the text, with notices, whatever the files are called", () => {
    const folder = install("a", "Apache-2.0", { "LICENCE.md": "Terms\r\nhere \n", NOTICE: "By us", "index.js": "" });
    expect(packageLicence(folder)).toEqual({
      name: "a",
      version: "1.2.3",
      licence: "Apache-2.0",
      text: "Terms\nhere\n\nBy us",
    });
  });

  it.each<[string, unknown, Readonly<Record<string, string>>, RegExp]>([
    ["a licence that is not allowed", "GPL-3.0-only", { LICENSE: "x" }, /x 1\.2\.3, whose licence is “GPL-3\.0-only”/],
    ["no licence", undefined, { LICENSE: "x" }, /whose licence is “”/],
    ["no text", "MIT", { "README.md": "MIT" }, /has no file with the text of its licence/],
    ["an empty text", "MIT", { LICENSE: " \n" }, /has no file with the text of its licence/],
  ])("stops at %s", (_, license, files, words) => {
    const folder = install("x", license, files);
    expect(() => packageLicence(folder)).toThrow(BuildError);
    expect(() => packageLicence(folder)).toThrow(words);
  });
});

describe("packagesOf(files)", () => {
  it("finds each package once, with scope and nested", () => {
    const files = [
      "src/a.ts",
      "../m/node_modules/one/x.js",
      "node_modules/@s/two/y/z.js",
      "../m/node_modules/one/y.js",
    ];
    expect(packagesOf([...files, "node_modules/one/node_modules/three/a.js"])).toEqual([
      join(process.cwd(), "../m/node_modules/one"),
      join(process.cwd(), "node_modules/@s/two"),
      join(process.cwd(), "node_modules/one/node_modules/three"),
    ]);
  });
});

describe("licencesText(own, packages), writeLicences(output, scripts)", () => {
  const one = { name: "one", version: "1.0.0", licence: "MIT", text: "Terms of one" };
  const two = { name: "two", version: "2.0.0", licence: "ISC", text: "Terms of two" };

  it("is the same in whatever order the packages come, our own terms first", () => {
    const text = licencesText("Ours\n", [two, one]);
    expect(text).toBe(licencesText("Ours\n", [one, two]));
    const at = ["Leaflight\n\nOurs", "one 1.0.0 (MIT)\n\nTerms of one", "two 2.0.0 (ISC)\n\nTerms of two"].map((part) =>
      text.indexOf(part),
    );
    expect(at).toEqual(at.toSorted((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(0);
  });

  it("writes the file below the site, in UTF-8", () => {
    const folder = install("one", "MIT", { LICENSE: "© Ünï" });
    writeLicences(base, [join(folder, "index.js")]);
    expect(readFileSync(join(base, "licences.txt"), "utf8")).toContain("one 1.2.3 (MIT)\n\n© Ünï");
  });
});

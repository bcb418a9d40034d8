import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { EXIT, tellFailure } from "../../../src/build/errors/command.ts";
import { programFault } from "../../../src/build/errors/program-fault.ts";
import { KitError } from "../../../src/input/files/message.ts";

const MESSAGE = { file: "a.md", line: 1, column: 2, field: "f", given: "g\u001b[2J", allowed: "a", remedy: "r" };

describe("tellFailure(error)", () => {
  let told: string[];
  beforeEach(() => {
    told = [];
    vi.spyOn(console, "error").mockImplementation((line: string) => void told.push(line));
  });
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it("tells what an author can mend with its place, and ends with 1", () => {
    expect(tellFailure(new KitError([MESSAGE]))).toBe(EXIT.mend);
    expect(told).toEqual([String.raw`a.md:1:2  f: g\u001b[2J; allowed: a; do: r`]);
  });

  it("tells what the machine cannot do as it stands, without what a terminal would obey", () => {
    expect(tellFailure(new BuildError("The disk is full.\nFree \u0007some."))).toBe(EXIT.mend);
    expect(told).toEqual(["The disk is full.\nFree \\u0007some."]);
  });
});

describe("programFault(error, base)", () => {
  let base: string;
  beforeEach(() => {
    base = mkdtempSync(join(tmpdir(), "leaflight-fault-"));
  });
  afterEach(() => {
    rmSync(base, { recursive: true });
  });

  it("is one sentence about the first cause, and writes the rest into a file", () => {
    const told = programFault(new Error("outer", { cause: new TypeError("x is not\u001b a thing.") }), base);
    expect(told).toMatch(/^Leaflight itself failed: x is not\\u001b a thing\. .* \.cache\/faults\/[0-9a-f]{8}\.txt\.$/);
    expect(told).not.toContain("\n");
    const file = /\.cache\/faults\/\w+\.txt/.exec(told)![0];
    expect(readFileSync(join(base, file), "utf8")).toMatch(/Error: outer[\s\S]*at [\s\S]*TypeError: x is not/);
  });

  it("is told also where nothing can be written, and of what is no error", () => {
    expect(programFault("thrown text", join(base, "\0"))).toMatch(
      /^Leaflight itself failed: thrown text\. .*report it\.$/,
    );
    expect(programFault(undefined, base)).toMatch(/^Leaflight itself failed: undefined\./);
  });
});

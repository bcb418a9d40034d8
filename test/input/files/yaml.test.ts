import { describe, expect, it } from "vitest";
import { KitError } from "../../../src/input/files/message.ts";
import { readYaml } from "../../../src/input/files/yaml.ts";

const read = (yaml: string): unknown => readYaml("a.yaml", yaml, 0, "all").value;

function faultOf(yaml: string, above = 0): string {
  try {
    readYaml("a.yaml", yaml, above, "all");
  } catch (error) {
    if (error instanceof KitError)
      return error.messages.map(({ line, column, given }) => `${line}:${column} ${given}`).join();
    throw error;
  }
  throw new Error("nothing was wrong");
}

describe("readYaml(file, yaml, above, whole)", () => {
  it("reads YAML 1.2: days, yes and << are plain texts", () => {
    expect(read("day: 2026-10-03\nsure: yes\nold: 017\n<<: { a: 1 }\n1: one")).toEqual({
      day: "2026-10-03",
      sure: "yes",
      old: 17,
      "<<": { a: 1 },
      "1": "one",
    });
    expect(read("%YAML 1.1\n---\nday: 2026-10-03\nsure: yes\n")).toEqual({ day: "2026-10-03", sure: "yes" });
    expect(read("")).toEqual({});
  });

  it("follows a few aliases", () => {
    expect(read("a: &a [1, 2]\nb: [*a, *a]")).toEqual({
      a: [1, 2],
      b: [
        [1, 2],
        [1, 2],
      ],
    });
  });

  it.each([
    ["a: !x 1", "1:7 the tag !x"],
    ["a: !!js/function 'x'", "1:18 the tag !!js/function"],
    ["a: 1\nb: !!binary aGk=", "2:13 the tag !!binary"],
    ["a: &a [*a]", "1:8 an alias inside the very thing"],
    ["a: *b", "1:4 an alias without an anchor"],
    ["a: 1\nb: 2\na: 3", '3:1 a second key "a"'],
    ["a: 1\n---\nb: 2", "2:1 a second YAML document"],
    ['a: "\\u0007"', "1:4 the control character U+0007"],
    [`a: ${"[".repeat(100)}`, "1:67 more than 64 lists"],
  ])("refuses %j", (yaml, fault) => {
    expect(faultOf(yaml)).toContain(fault);
  });

  it("counts the lines above it", () => {
    expect(faultOf("a: 1\nb: !x 1", 10)).toContain("12:7 the tag");
  });

  it("ends soon with aliases that unfold to ten billion entries, and with a hundred thousand keys", () => {
    const names = [..."abcdefghij"];
    const bomb = names.map(
      (name, i) =>
        `${name}: &${name} [${Array(10)
          .fill(i > 0 ? `*${names[i - 1]}` : "x")
          .join(",")}]`,
    );
    expect(faultOf(bomb.join("\n"))).toContain("aliases beyond all use");
    expect(faultOf(Array.from({ length: 100_000 }, (_, i) => `k${i}: 1`).join("\n"))).toContain(
      "more than 100,000 words",
    );
  });
});

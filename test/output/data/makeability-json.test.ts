import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Trouble } from "../../../src/core/makeability/trouble.ts";
import { makeabilityJson } from "../../../src/output/data/makeability-json.ts";
import { lookedAt } from "../../core/makeability/assessed.ts";
import { kitOf } from "../../core/pattern/made.ts";
import { box } from "../../core/window/made.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";

const PAGE = readFileSync(join(import.meta.dirname, "../../../content/guide/en/makeability.md"), "utf8");
const codes = (text: string): string[] => [...text.matchAll(/`([^`]+)`/g)].map(([, code]) => code!);

/** The first two cells of each row of a section's table. */
function rowsOf(heading: string): string[][] {
  const section = PAGE.split(/^## /m).find((one) => one.startsWith(`${heading}\n`))!;
  const rows = section.split("\n").filter((line) => line.startsWith("|"));
  return rows.slice(2).map((row) => row.split("|").slice(1, 3));
}

/** Strips too short, parts too narrow, a comb of cuts, flaps that spring open, and a level that goes on to the picture's sides. */
const TROUBLED = kitOf({
  fit: { view: "front", spine: "flat", foldStyle: "stepped", flapBulk: 20 },
  picture: {
    width: 10,
    height: 10,
    background: 3,
    shapes: [
      { level: 2, rule: "nonzero", rings: [box(0, 0, 10, 10)] },
      ...[0, 1.5, 3, 4.5, 6].map((y) => ({
        level: 1,
        rule: "nonzero" as const,
        rings: [box(4, 1 + y, 8, 1.6 + y)],
      })),
      { level: 1, rule: "nonzero", rings: [box(1.9, 1, 2.1, 4)] },
      { level: 1, rule: "nonzero", rings: [box(1, 5, 3, 5.2)] },
    ],
  },
});

const KITS = [fixtureKit("harbour-moon"), TROUBLED];
const published = KITS.map((kit) => JSON.parse(makeabilityJson(kit, lookedAt(kit))));

describe("makeabilityJson(kit, made)", () => {
  it("has a line of the guide for each key", () => {
    for (const one of published) {
      expect(
        Object.keys(one).filter(
          (key) =>
            !rowsOf("Top")
              .flatMap(([cell]) => codes(cell!))
              .includes(key),
        ),
      ).toEqual([]);
      for (const name of ["picture", "levels", "merged", "narrow", "fullLeaves"]) {
        const told = rowsOf(name).flatMap(([cell]) => codes(cell!));
        const items: object[] = [one[name]].flat();
        for (const item of items) expect(Object.keys(item).filter((key) => !told.includes(key))).toEqual([]);
      }
    }
  });

  it("has each kind of trouble in the guide, with its figures", () => {
    const kinds: Record<Trouble["kind"], readonly string[]> = {
      hidden: ["level", "share"],
      "out-of-reach": ["level"],
      slivers: ["strips", "places", "most", "share"],
      narrow: ["unseen", "pitch"],
      "many-cuts": ["most"],
      "springs-open": ["opening", "resting"],
    };
    const told = rowsOf("What is looked at").map(([kind, what]) => [codes(kind!)[0], codes(what!).sort()]);
    expect(Object.fromEntries(told)).toEqual(
      Object.fromEntries(Object.entries(kinds).map(([kind, figures]) => [kind, figures.toSorted()])),
    );
    for (const { kind, figure: _, ways: __, ...figures } of published.flatMap(({ troubles }) => troubles))
      expect(Object.keys(figures).sort()).toEqual(kinds[kind as Trouble["kind"]].toSorted());
  });

  it("writes every trouble, each with its sentence", () => {
    const kinds = new Set(published.flatMap(({ troubles }) => troubles.map(({ kind }: Trouble) => kind)));
    expect([...kinds].sort()).toEqual(["hidden", "many-cuts", "narrow", "out-of-reach", "slivers", "springs-open"]);
    for (const { troubles, sentences } of published) expect(sentences).toHaveLength(troubles.length);
  });

  it("writes no number with more than four decimals", () => {
    for (const kit of KITS) expect(makeabilityJson(kit, lookedAt(kit))).not.toMatch(/\d\.\d{5}/);
  });
});

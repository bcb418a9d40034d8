import { describe, expect, it } from "vitest";
import type { PrintJob } from "../../../src/build/print/print-job.ts";
import { sittings } from "../../../src/build/print/sittings.ts";
import { PAPERS } from "../../../src/output/views/paper.ts";

const job = (page: string, title: string, without?: "strips"): PrintJob => ({
  page,
  title,
  of: { kind: "kit", slug: "made", name: page },
  pictures: [],
  paper: PAPERS[0]!,
  target: "out.pdf",
  footer: "",
  ...(without && { without }),
});

describe("sittings(jobs)", () => {
  const made = sittings([
    job("one", "a"),
    job("one", "b", "strips"),
    job("two", "c"),
    job("one", "d"),
    job("one", "e", "strips"),
  ]);

  it("has one for each page, with all of its jobs", () => {
    expect(made.map((own) => own.map(({ page }) => page))).toEqual([["one", "one", "one", "one"], ["two"]]);
  });

  it("prints what leaves sheets out after all that has them", () => {
    expect(made[0]!.map(({ title }) => title)).toEqual(["a", "d", "b", "e"]);
  });

  it("has none without jobs", () => {
    expect(sittings([])).toEqual([]);
  });
});

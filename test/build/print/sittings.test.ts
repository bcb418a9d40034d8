import { describe, expect, it } from "vitest";
import type { Edition, PrintJob } from "../../../src/build/print/print-job.ts";
import { sittings } from "../../../src/build/print/sittings.ts";
import { PAPERS } from "../../../src/output/views/paper.ts";

const job = (page: string, title: string, edition?: Edition): PrintJob => ({
  page,
  title,
  of: { kind: "kit", slug: "made", name: page },
  pictures: [],
  paper: PAPERS[0]!,
  target: "out.pdf",
  footer: "",
  ...(edition && { edition }),
});

describe("sittings(jobs)", () => {
  const made = sittings([
    job("one", "a"),
    job("one", "b", "bench"),
    job("two", "c"),
    job("one", "d"),
    job("one", "e", "bench"),
  ]);

  it("has one for each page, with all of its jobs", () => {
    expect(made.map((own) => own.map(({ page }) => page))).toEqual([["one", "one", "one", "one"], ["two"]]);
  });

  it("prints what changes the page after all that does not", () => {
    expect(made[0]!.map(({ title }) => title)).toEqual(["a", "d", "b", "e"]);
  });

  it("has none without jobs", () => {
    expect(sittings([])).toEqual([]);
  });
});

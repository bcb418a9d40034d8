import { describe, expect, it } from "vitest";
import { classReport, MisfitError, tellReports } from "../../../src/build/library/class-report.ts";
import { fixtureClassView } from "../../output/parts/class/made-view.ts";

function reported(changes: object = {}): string[] {
  const lines: string[] = [];
  tellReports([classReport(fixtureClassView(changes))], false, (line) => lines.push(line.replaceAll("\u00a0", " ")));
  return lines;
}

describe("tellReports(reports, stop, log)", () => {
  it("tells why a seat does not fit, and what would help, before all else", () => {
    const [why, ...rest] = reported();
    expect(why).toMatch(
      /^winter-evenings, seat 6: harbour-moon does not fit its book\. A picture 130 mm tall .*\. What would help:$/,
    );
    const helps = rest.filter((line) => line.startsWith("  - "));
    const line = expect.stringMatching(/^ {4}below seats: - \{ seat: 6, kit: /);
    expect(rest.slice(0, 2 * helps.length)).toEqual(helps.flatMap((help) => [help, line]));
    // 8 mm stay free at head and tail of a leaf that is 105 mm tall.
    expect(helps[0]).toMatch(/^ {2}- Make the picture 89 mm tall/);
    expect(helps).toContain("  - Choose Little Gull instead. Make the picture 89 mm tall.");
    expect(helps.filter((help) => help.includes("105 mm"))).toEqual([]);
  });

  it("says which books are still to come, and goes on with the others", () => {
    const awaiting = [9, 11].map((number) => ({ number, kit: undefined }));
    const [first, ...rest] = reported({ awaiting });
    expect(first).toBe("winter-evenings: 8 of 10 seats have a book; the books for seats 9 and 11 are still to come.");
    expect(rest).toEqual(reported());
  });

  it("tells it in the class's units", () => {
    for (const line of reported({ units: "in" })) expect(line).not.toMatch(/\d mm\b/);
  });

  it("warns of what may disappoint, by seat, and of stock that nothing uses", () => {
    const stock = [{ id: undefined, item: "gold leaf", quantity: 1 }];
    const warnings = reported({ stock }).filter((line) => line.startsWith("warning  "));
    expect(warnings).toContain(
      "warning  winter-evenings, seat 1: 3 strips on 3 leaves were shorter than 3 mm, too short to fold, and were merged with the next.",
    );
    expect(warnings.at(-1)).toBe(
      "warning  winter-evenings: nothing on the shopping list is called “gold leaf”, which is in stock",
    );
  });

  it("stops at a misfit where that is asked, and logs nothing then", () => {
    const lines: string[] = [];
    expect(() => tellReports([classReport(fixtureClassView())], true, (line) => lines.push(line))).toThrow(MisfitError);
    expect(lines).toEqual([]);
  });
});

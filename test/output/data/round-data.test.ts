import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { roundScript } from "../../../src/output/data/round-data.ts";
import { dataOf, publishedDemo } from "../../page/view3d/made.ts";

describe("roundData(published)", () => {
  it("takes over what it keeps as it is published", () => {
    const pattern = publishedDemo("harbour-moon");
    const data = dataOf(pattern);
    expect(pattern).toMatchObject({
      ...data,
      insert: undefined,
      light: undefined,
      leaves: undefined,
      ...whole(pattern),
    });
    expect(data.leaves.map(({ spans }) => spans)).toEqual(pattern.leaves.map((leaf: { spans: unknown }) => leaf.spans));
    expect(pattern.light).toMatchObject({ floor: data.light!.floor, centre: data.light!.centre });
    expect(data.light!.notches).toHaveLength(pattern.light.notches.length);
    expect(data.insert!.parts.map(({ kind }) => kind)).not.toContain("holder");
  });

  it("leaves out light and window where the kit has none", () => {
    const data = dataOf(publishedDemo("little-gull"));
    expect(data).not.toHaveProperty("light");
    expect(data).not.toHaveProperty("insert");
  });
});

describe("roundScript(data)", () => {
  it("is a classic script that hands the data over, beside what is there already", () => {
    const data = dataOf(publishedDemo("little-gull"));
    const page = { leaflightRound: { show: 1 } };
    runInNewContext(roundScript(data), page);
    expect(JSON.parse(JSON.stringify(page.leaflightRound))).toEqual({ show: 1, data });
  });
});

/** What the comparison above leaves to the lines after it. */
function whole({ insert, light, leaves }: Record<string, unknown>): Record<string, unknown> {
  return { insert, light, leaves };
}

import { describe, expect, it } from "vitest";
import { keepUppermost } from "../../../src/core/picture/uppermost.ts";
import { fc } from "../../seed.ts";

const changes = fc.array(fc.tuple(fc.boolean(), fc.oneof(fc.nat(40), fc.nat(2999))), { maxLength: 120 });

describe("keepUppermost(count)", () => {
  it("is the greatest of a set of numbers, or −1, as they come and go", () => {
    fc.assert(
      fc.property(changes, (all) => {
        const [put, numbers] = [keepUppermost(3000), new Set<number>()];
        for (const [comes, one] of all) {
          const greatest = put(one, comes);
          if (comes) numbers.add(one);
          else numbers.delete(one);
          expect(greatest).toBe(Math.max(-1, ...numbers));
        }
      }),
    );
  });

  it("has none where the last one is taken out", () => {
    expect(keepUppermost(1)(0, false)).toBe(-1);
  });
});

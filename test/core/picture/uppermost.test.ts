import { describe, expect, it } from "vitest";
import { Uppermost } from "../../../src/core/picture/uppermost.ts";
import { fc } from "../../seed.ts";

// Numbers beyond 1024 are in a second block of blocks.
const changes = fc.array(fc.tuple(fc.boolean(), fc.oneof(fc.nat(40), fc.nat(2999))), { maxLength: 120 });

describe("Uppermost", () => {
  it("is the greatest of a set of numbers, or −1, as they come and go", () => {
    fc.assert(
      fc.property(changes, (all) => {
        const [kept, numbers] = [new Uppermost(3000), new Set<number>()];
        for (const [comes, one] of all) {
          if (comes) kept.add(one);
          else kept.remove(one);
          if (comes) numbers.add(one);
          else numbers.delete(one);
          expect(kept.greatest).toBe(Math.max(-1, ...numbers));
        }
      }),
    );
  });

  it("has none where there are no numbers", () => {
    expect(new Uppermost(0).greatest).toBe(-1);
  });
});

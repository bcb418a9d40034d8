import { describe, expect, it, vi } from "vitest";
import type { Kit } from "../../../../src/core/kit/kit.ts";
import { type SeatAsk, type SeatHost, SeatJudge, serveSeats } from "../../../../src/page/desk/seats/judge-seats.ts";
import { fixtureKit } from "../../../input/kit/kit-folders.ts";

/** A worker in this thread that answers when it is told to. */
class HeldWorker {
  onmessage: ((event: unknown) => void) | null = null;
  readonly asked: SeatAsk[] = [];
  readonly #host: SeatHost = { onmessage: null, postMessage: (data) => this.onmessage?.({ data }) };

  constructor() {
    serveSeats(this.#host);
  }

  postMessage(ask: SeatAsk): void {
    this.asked.push(ask);
  }

  /** Answers what was asked last. */
  answer(): void {
    this.#host.onmessage?.({ data: this.asked.at(-1)! });
  }
}

describe("SeatJudge", () => {
  const kit = fixtureKit("little-gull");
  const other: Kit = { ...kit, fit: { ...kit.fit, head: kit.book.leafHeight - 20 } };

  it("judges a seat once", () => {
    const [worker, told] = [new HeldWorker(), vi.fn()];
    const judge = new SeatJudge(told, () => worker as unknown as Worker);
    expect([judge.verdict(kit, {}), judge.verdict(kit, {})]).toEqual([undefined, undefined]);
    worker.answer();
    expect(told).toHaveBeenCalledOnce();
    expect(judge.verdict(kit, {})).toBeDefined();
    expect(worker.asked).toHaveLength(1);
  });

  it("does not take the verdict of a kit as it was for one of the kit as it is", () => {
    const worker = new HeldWorker();
    const judge = new SeatJudge(
      () => {},
      () => worker as unknown as Worker,
    );
    judge.verdict(kit, {});
    judge.forget();
    expect(judge.verdict(other, {})).toBeUndefined();
    worker.answer();
    expect(judge.verdict(other, {})).toBeUndefined();
    worker.answer();
    expect(worker.asked.map((ask) => ask.kit?.fit.head)).toEqual([kit.fit.head, other.fit.head]);
    // A picture that begins 20 mm above the tail has no room on the leaf.
    expect(judge.verdict(other, {})?.kind).toMatch(/^(change|no)$/);
  });
});

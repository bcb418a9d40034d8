import { describe, expect, it, vi } from "vitest";
import { asCutKit } from "../../../../src/core/kit/cut-kit.ts";
import type { Kit } from "../../../../src/core/kit/kit.ts";
import { makeabilityOf } from "../../../../src/core/makeability/makeability.ts";
import { fitKit } from "../../../../src/core/pattern/fit-kit.ts";
import { FitBench } from "../../../../src/page/desk/draft/fit-bench.ts";
import type { FitAnswer, FitAsk, Found } from "../../../../src/page/desk/draft/fit-work.ts";
import { type FitHost, serveFits } from "../../../../src/page/desk/draft/serve-fits.ts";
import { fixtureKit } from "../../../input/kit/kit-folders.ts";

/** A worker in this thread: what is sent is copied, and heard after a moment. */
class NearWorker {
  static opened: NearWorker[] = [];
  /** How long each begins nothing, ms. */
  static pause = 0;
  readonly asked: FitAsk[] = [];
  onmessage: ((event: { readonly data: FitAnswer }) => void) | null = null;
  isEnded = false;
  readonly #host: FitHost = {
    onmessage: null,
    postMessage: (answer) => {
      const copy = structuredClone(answer);
      queueMicrotask(() => this.onmessage?.({ data: copy }));
    },
  };

  constructor() {
    NearWorker.opened.push(this);
    serveFits(this.#host);
  }

  postMessage(ask: FitAsk): void {
    const copy = structuredClone(ask);
    this.asked.push(copy);
    setTimeout(() => {
      if (!this.isEnded) this.#host.onmessage?.({ data: copy });
    }, NearWorker.pause);
  }

  terminate(): void {
    this.isEnded = true;
  }
}

function opened() {
  NearWorker.opened = [];
  NearWorker.pause = 0;
  const bench = new FitBench(() => new NearWorker() as unknown as Worker, 5);
  const heard: Found[] = [];
  return { bench, heard, hear: (found: Found) => heard.push(found), workers: NearWorker.opened };
}

const stagesOf = (heard: readonly Found[]): string[] => heard.map(({ stage }) => stage);

/** A kit on a book on which the picture of another height does not fit. */
const tooTall = (kit: Kit): Kit => ({ ...kit, fit: { ...kit.fit, head: kit.book.leafHeight - 20 } });

describe("FitBench.look(kit, hear)", () => {
  const kit = fixtureKit("little-gull");

  it("finds the kit whole, what is seen of it, and what would help", async () => {
    const { bench, heard, hear } = opened();
    bench.look(kit, hear);
    await vi.waitFor(() => expect(stagesOf(heard)).toEqual(["whole", "seen", "ways"]));
    const result = fitKit(asCutKit(kit));
    if (!result.fits) throw new Error("the kit does not fit");
    const { place, troubles, ...figures } = makeabilityOf({ kit: asCutKit(kit), ...result });
    expect(heard).toEqual([
      { stage: "whole", result },
      { stage: "seen", figures: { ...figures } },
      { stage: "ways", troubles, offers: [] },
    ]);
    bench.end();
  });

  it("finds why a kit cannot be made, and what would help", async () => {
    const { bench, heard, hear } = opened();
    bench.look(tooTall(kit), hear);
    await vi.waitFor(() => expect(stagesOf(heard)).toEqual(["whole", "ways"]));
    expect(heard).toMatchObject([{ result: { fits: false } }, { offers: [{}] }]);
    bench.end();
  });

  it("tells nothing of a kit when another one is looked at, and sends a picture once", async () => {
    const { bench, heard, hear, workers } = opened();
    const old = vi.fn();
    bench.look(kit, old);
    bench.look(tooTall(kit), old);
    bench.look({ ...kit, title: "Last" }, hear);
    await vi.waitFor(() => expect(stagesOf(heard)).toEqual(["whole", "seen", "ways"]));
    expect(old).not.toHaveBeenCalled();
    expect(workers[0]!.asked.map(({ kit: one, picture }) => [one.title, picture !== undefined])).toEqual([
      [kit.title, true],
      ["Last", false],
    ]);
    bench.end();
  });

  it("leaves ways that are being looked for when something changes", async () => {
    const { bench, heard, hear, workers } = opened();
    NearWorker.pause = 300;
    bench.look(kit, () => {});
    await vi.waitFor(() => expect(workers).toHaveLength(2));
    NearWorker.pause = 0;
    bench.look({ ...kit, title: "Last" }, hear);
    expect(workers[1]!.isEnded).toBe(true);
    await vi.waitFor(() => expect(stagesOf(heard).toSorted()).toEqual(["seen", "ways", "whole"]));
    bench.end();
    expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, true, true]);
  });
});

import { finishPdf } from "./finish-pdf.ts";
import { LastingPress } from "./lasting-press.ts";
import type { PressSettings } from "./press.ts";
import { pressCount } from "./press-count.ts";
import { failed } from "./print-error.ts";
import type { PrintJob } from "./print-job.ts";
import type { RawPdf } from "./print-sitting.ts";
import { type Sitting, sittings } from "./sittings.ts";

/** What a run of printing works with. */
export interface Printing extends PressSettings {
  /** The site's address, where it has one. */
  readonly address: string | undefined;
  /** How many browsers print at once, where that is not left to the machine. */
  readonly presses?: number;
}

/** Called with each PDF, in any order. */
type Done = (job: PrintJob, pdf: Uint8Array) => void;

/**
 * Prints pages on presses side by side, and finishes each PDF while its press goes on. The first failure stops all of them.
 * @throws PrintError on overflow and on a page that asks for more than its site; BrowserError
 */
export async function printEach(printing: Printing, jobs: readonly PrintJob[], done: Done): Promise<void> {
  const failure = new AbortController();
  const run: PrintRun = { queue: sittings(jobs), failure, finish: (raw) => finish(raw, printing, run, done) };
  const presses = Math.min(printing.presses ?? pressCount(), run.queue.length);
  await Promise.all(
    Array.from({ length: presses }, (_, i) =>
      work(run, printing, i === 0).catch((error: unknown) => failure.abort(error)),
    ),
  );
  failure.signal.throwIfAborted();
}

/** What the presses of a run share. */
interface PrintRun {
  readonly queue: Sitting[];
  /** Of any of them: the first one counts. */
  readonly failure: AbortController;
  readonly finish: (raw: RawPdf) => Promise<void>;
}

async function work({ queue, failure, finish }: PrintRun, settings: PressSettings, first: boolean): Promise<void> {
  const press = first ? await LastingPress.start(settings) : await further(settings);
  if (!press) return;
  failure.signal.addEventListener("abort", () => press.close());
  let finishing: Promise<void> | undefined;
  try {
    for (let sitting = queue.shift(); sitting && !failure.signal.aborted; sitting = queue.shift()) {
      for await (const raw of press.print(sitting)) {
        await finishing;
        finishing = finish(raw).catch((error: unknown) => failure.abort(error));
      }
    }
    await finishing;
  } finally {
    await press.close();
  }
}

/** One more press, quietly; where its browser does not start, the first does without. */
function further(settings: PressSettings): Promise<LastingPress | undefined> {
  return LastingPress.start({ ...settings, note: () => undefined }).catch(() => undefined);
}

async function finish(
  { job, pdf }: RawPdf,
  { found, address }: Printing,
  { failure }: PrintRun,
  done: Done,
): Promise<void> {
  let finished: Uint8Array;
  try {
    finished = await finishPdf(pdf, job.title, address);
  } catch (error) {
    throw failed(error, job.of, found);
  }
  if (!failure.signal.aborted) done(job, finished);
}

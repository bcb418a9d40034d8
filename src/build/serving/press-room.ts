import { existsSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { PrintAsk } from "../../input/desk/protocol.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import type { Library } from "../library/library.ts";
import { classJobs } from "../print/class-packets.ts";
import { countClass } from "../print/class-plan.ts";
import { kitJobs } from "../print/kit-jobs.ts";
import { mergeSeats } from "../print/merge-seats.ts";
import { byFields } from "../print/overflow-fields.ts";
import type { PrintJob } from "../print/print-job.ts";
import { printJobs } from "../print/print-jobs.ts";
import { type PrintLog, printLog } from "../print/progress.ts";

/** What an address of a PDF that a build prints belongs to. */
const OF_KIT = /^kits\/([^/]+)\/[^/]+\.pdf$/;
const OF_CLASS = /^(?:private\/)?classes\/([^/]+)\/(?:.+\/)?([^/]+)\.pdf$/;
const MERGED = /^(all-seats|to-read|to-cut-out)-/;

/** Prints PDFs of a served site when they are asked for; one that was printed from what its page is now is taken as it was kept. */
export class PressRoom {
  readonly #output: string;
  /** Under way, by their paths. */
  readonly #printing = new Map<string, Promise<void>>();
  /** What was printed since the start, by its path: its kit or class may be gone. */
  readonly #printed = new Set<string>();
  #last: Promise<void> = Promise.resolve();

  constructor(output: string) {
    this.#output = output;
  }

  /** Prints what stands at a path below the site, if a build would; asked several times at once, it prints once. @throws BuildError, KitError */
  print(path: string, library: Library): Promise<void> {
    const known = this.#printing.get(path);
    if (known) return known;
    const work = async (): Promise<void> => this.#note(path, await this.#print(path, library));
    const printing = this.#inTurn(library, work).finally(() => this.#printing.delete(path));
    this.#printing.set(path, printing);
    return printing;
  }

  /** Prints all PDFs of a kit or of a class; `log` hears how far that is. What is printed at the time goes before. @throws BuildError, KitError */
  printAll(asked: PrintAsk, library: Library, log: (count: number) => PrintLog): Promise<void> {
    return this.#inTurn(library, () => this.#printAll(asked, library, log));
  }

  /** One after the other: they may need the same packets. */
  #inTurn(library: Library, work: () => Promise<void>): Promise<void> {
    const printing = this.#last.then(work).catch((error: unknown) => {
      throw byFields(error, library.texts());
    });
    this.#last = printing.catch(() => undefined);
    return printing;
  }

  async #printAll({ kind, slug }: PrintAsk, library: Library, log: (count: number) => PrintLog): Promise<void> {
    const run = (jobs: readonly PrintJob[]): Promise<void> =>
      printJobs(this.#output, jobs, { address: library.settings.url, log });
    const kit = kind === "kit" && library.kits.find((one) => one.slug === slug);
    if (kit) await run(kitJobs(this.#output, kit.card.kit));
    if (kind !== "class" || !library.classes.some((one) => one.slug === slug)) return;
    const view = library.classView(slug);
    await run(classJobs(this.#output, view));
    await mergeSeats(this.#output, view);
  }

  /** Of what a build would not print any more nothing stays. */
  #note(path: string, isPrinted: boolean): void {
    if (isPrinted) this.#printed.add(path);
    else if (this.#printed.delete(path)) rmSync(join(this.#output, path), { force: true });
  }

  /** @returns whether a build would print it */
  async #print(path: string, library: Library): Promise<boolean> {
    const run = async (jobs: readonly PrintJob[]): Promise<boolean> => {
      await printJobs(this.#output, jobs, { address: library.settings.url, log: printLog });
      return jobs.length > 0;
    };
    const only = (jobs: readonly PrintJob[]): PrintJob[] =>
      jobs.filter(({ target }) => target === join(this.#output, path));
    const kit = library.kits.find(({ slug }) => slug === OF_KIT.exec(path)?.[1]);
    if (kit) return run(only(kitJobs(this.#output, kit.card.kit)));
    const [, slug, name] = OF_CLASS.exec(path) ?? [];
    const view = library.classes.some((one) => one.slug === slug) && library.classView(slug!);
    if (!view || view.plan.state === "closed") return false;
    if (name === "print-plan") return run(await this.#countAll(view, run));
    const jobs = classJobs(this.#output, view);
    if (!MERGED.test(name!)) return run(only(jobs));
    await run(jobs);
    await mergeSeats(this.#output, view);
    return existsSync(join(this.#output, path));
  }

  /** A plan counts the pages of all that is printed of its class. */
  async #countAll(view: ClassView, run: (jobs: readonly PrintJob[]) => Promise<boolean>): Promise<PrintJob[]> {
    await run(classJobs(this.#output, view));
    await mergeSeats(this.#output, view);
    return countClass(this.#output, view);
  }
}

import type { Page } from "puppeteer";

/** An event of a browser's trace, as far as it is asked for. */
interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** What the thread worked at it, µs: other programs that hold the processor meanwhile do not count. */
  readonly tdur?: number;
  readonly args: { readonly name?: string; readonly data?: { readonly url?: string; readonly processId?: number } };
}

/**
 * The longest that a page's own thread works at a stretch while something is done, ms of processor time. One browser traces
 * one page at a time.
 * @throws Error where the trace does not know the page
 */
export async function longestTask(page: Page, act: () => Promise<unknown>): Promise<number> {
  await page.tracing.start({ categories: ["-*", "disabled-by-default-devtools.timeline", "devtools.timeline"] });
  await act();
  const trace: { traceEvents: TraceEvent[] } = JSON.parse(Buffer.from((await page.tracing.stop())!).toString());
  const events = trace.traceEvents;
  // A page may have changed what follows its path.
  const { origin, pathname } = new URL(page.url());
  const isOfPage = (url = ""): boolean => url.startsWith(origin + pathname);
  const shown = events.findLast(({ name, args }) => name === "FrameCommittedInBrowser" && isOfPage(args.data?.url));
  const pid = shown?.args.data?.processId;
  const main = events.find((one) => one.pid === pid && one.args.name === "CrRendererMain");
  if (!main) throw new Error(`the trace does not tell which thread shows ${page.url()}`);
  const tasks = events.filter(({ name, pid, tid }) => name === "RunTask" && pid === main.pid && tid === main.tid);
  return Math.max(...tasks.map(({ tdur = 0 }) => tdur / 1000));
}

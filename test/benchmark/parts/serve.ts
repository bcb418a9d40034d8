import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { setTimeout as wait } from "node:timers/promises";
import { commandWords } from "../../site/command.ts";
import type { Figure } from "../figure.ts";
import { middleAndMost } from "../numbers.ts";
import { idle } from "../process/idle.ts";
import { type StrangersSite, strangersSite } from "../process/strangers-site.ts";
import type { Scale } from "../scale.ts";
import { yardstick } from "../yardstick.ts";

/** Longest that a page is waited for, ms. */
const PATIENCE = 1_800_000;

/** How often it is asked for, ms. */
const POLLING = 20;

/** From saving a kit's file to its page, with few kits and with many. */
export async function measureServe({ quick }: Scale): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const [count, changes] of quick
    ? ([[4, 3]] as const)
    : ([
        [4, 7],
        [100, 3],
      ] as const)) {
    const turn = yardstick();
    const site = strangersSite(count);
    try {
      const times = await timeChanges(site, changes);
      figures.push({ line: `serve-${count}`, value: middleAndMost(times).median, yardstick: turn });
    } finally {
      site.remove();
    }
  }
  return figures;
}

/** Seconds from each of some changes to the page that has it; each begins when nothing of the last goes on. */
async function timeChanges(site: StrangersSite, changes: number): Promise<number[]> {
  const port = await freePort();
  const served = spawn(process.execPath, commandWords("src/build/start.ts", "--port", String(port)), {
    cwd: site.folder,
    stdio: "ignore",
  });
  try {
    await pageWith(port, "index.html", site.strangers[0]!.slug);
    const times: number[] = [];
    for (let i = 0; i < changes; i += 1) {
      await idle(served.pid!);
      const { page, text } = site.changeOne();
      const start = performance.now();
      await pageWith(port, page, text);
      times.push((performance.now() - start) / 1000);
    }
    return times;
  } finally {
    const gone = new Promise((resolve) => served.once("exit", resolve));
    served.kill();
    await gone;
  }
}

async function pageWith(port: number, page: string, text: string): Promise<void> {
  const end = performance.now() + PATIENCE;
  while (performance.now() < end) {
    const found = await fetch(`http://localhost:${port}/${page}`).then(
      (answer) => answer.text(),
      () => "",
    );
    if (found.includes(text)) return;
    await wait(POLLING);
  }
  throw new Error(`${page} was never served with: ${text}`);
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, "localhost", () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
}

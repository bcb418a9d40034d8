import { basename, relative } from "node:path";
import type { PrintAsk } from "../input/desk/protocol.ts";
import { contentPath, PROJECT_CONTENT } from "../input/files/content-folder.ts";
import * as say from "../words/messages.ts";
import { clearBrowsers } from "./browser/browser-leftovers.ts";
import { DeskAtWork } from "./desk/desk-at-work.ts";
import { BuildError } from "./errors/build-error.ts";
import { runCommand } from "./errors/command.ts";
import { speakFirst } from "./library/first-words.ts";
import { endWhenInterrupted } from "./making/at-exit.ts";
import { holdServed } from "./making/hold-served.ts";
import { MakingThread } from "./serving/making-thread.ts";
import { SERVED_PORT, ServedSite } from "./serving/served-site.ts";
import { watchProject } from "./serving/watched.ts";
import { chooseSite } from "./site/choose-site.ts";

/** `npm start`: serves the site that is chosen and the desk where it is made, and follows every change. */
const SERVED = ".cache/serving";
const PORTS = ["--port", "--desk-port"] as const;

await runCommand(async () => {
  endWhenInterrupted();
  const base = process.cwd();
  speakFirst(base);
  const ports = portsOf(chooseSite(base, process.argv.slice(2), ["content", "url"]));
  const port = ports["--port"] ?? SERVED_PORT;
  const content = contentPath();
  const output = content === PROJECT_CONTENT ? SERVED : `${SERVED}-${basename(content)}`;
  clearBrowsers();
  const aside = relative(base, await holdServed(base, output));
  const maker = new MakingThread(
    { base, content, output, aside },
    {
      shown: () => site.show(port),
      found: (state) => desk.show(state),
      printing: (news) => desk.tell(news),
      nothing: (code) => process.exit(code),
    },
  );
  const printAll = (of: PrintAsk): void => maker.printAll(of);
  const desk = new DeskAtWork({ base, output, site: () => site.origin, print: printAll });
  const visit = (path: string): Promise<void> => maker.visit(path);
  const site = new ServedSite(output, { print: (path) => maker.print(path), printAll, visit, ...desk.shared });
  console.log(say.deskOpened({ address: await desk.open(ports["--desk-port"] ?? port + 1) }));
  await watchProject(base, (paths) => {
    desk.follow(paths);
    maker.follow(paths);
  });
  maker.follow([]);
});

/** The ports behind `--port` and `--desk-port`, where they are stated. @throws BuildError */
function portsOf(words: readonly string[]): Partial<Record<(typeof PORTS)[number], number>> {
  const parts = words.flatMap((word) => word.split(/(?<=^--(?:desk-)?port)=/));
  const ports: Partial<Record<(typeof PORTS)[number], number>> = {};
  for (let i = 0; i < parts.length; i += 2) {
    const option = PORTS.find((one) => one === parts[i]);
    if (option === undefined || ports[option] !== undefined)
      throw new BuildError(say.siteStartOption({ option: parts[i]! }));
    ports[option] = portOf(parts[i + 1]);
  }
  return ports;
}

function portOf(value: string | undefined): number {
  const port = Number(value);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new BuildError(say.siteStartPort({ given: value ?? "" }));
  return port;
}

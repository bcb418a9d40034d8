import { basename, relative } from "node:path";
import type { PrintAsk } from "../input/desk/protocol.ts";
import { contentPath, PROJECT_CONTENT } from "../input/files/content-folder.ts";
import * as say from "../words/messages.ts";
import { clearBrowsers } from "./browser/browser-leftovers.ts";
import { runCommand } from "./errors/command.ts";
import { speakFirst } from "./library/first-words.ts";
import { endWhenInterrupted } from "./making/at-exit.ts";
import { holdServed } from "./making/hold-served.ts";
import { MakingThread } from "./serving/making-thread.ts";
import { startOptions } from "./serving/start-options.ts";
import { chooseSite } from "./site/choose-site.ts";

/** `npm start`: serves the site that is chosen and the desk where it is made, and follows every change. */
const SERVED = ".cache/serving";

await runCommand(async () => {
  endWhenInterrupted();
  const base = process.cwd();
  speakFirst(base);
  const options = startOptions(chooseSite(base, process.argv.slice(2), ["content", "url"]));
  const content = contentPath();
  const output = content === PROJECT_CONTENT ? SERVED : `${SERVED}-${basename(content)}`;
  clearBrowsers();
  const aside = relative(base, await holdServed(base, output));
  // It loads what it works with while the rest is loaded here.
  const maker = new MakingThread({ base, content, output, aside });
  const [{ DeskAtWork }, { SERVED_PORT, ServedSite }, { watchProject }] = await Promise.all([
    import("./desk/desk-at-work.ts"),
    import("./serving/served-site.ts"),
    import("./serving/watched.ts"),
  ]);
  const { port = SERVED_PORT, deskPort = port + 1, isOpenToNetwork } = options;
  const printAll = (of: PrintAsk): void => maker.printAll(of);
  const visit = (path: string): Promise<void> => maker.visit(path);
  const desk = new DeskAtWork({ base, output, site: () => site.origin, print: printAll, visit });
  const works = { print: (path: string) => maker.print(path), printAll, visit, ...desk.shared };
  const site = new ServedSite(output, works, isOpenToNetwork);
  maker.tell({
    shown: () => site.show(port),
    found: (state) => desk.show(state),
    failed: (sentence) => desk.tell({ news: "failure", sentence }),
    printing: (news) => desk.tell(news),
    nothing: (code) => process.exit(code),
  });
  console.log(say.deskOpened({ address: await desk.open(deskPort) }));
  await watchProject(base, (paths) => {
    desk.follow(paths);
    maker.follow(paths);
  });
  maker.follow([]);
});

import { basename, relative } from "node:path";
import { contentPath, PROJECT_CONTENT } from "../input/files/content-folder.ts";
import * as say from "../words/messages.ts";
import { clearBrowsers } from "./browser/browser-leftovers.ts";
import { BuildError } from "./errors/build-error.ts";
import { runCommand } from "./errors/command.ts";
import { speakFirst } from "./library/first-words.ts";
import { endWhenInterrupted } from "./making/at-exit.ts";
import { holdServed } from "./making/hold-served.ts";
import { MakingThread } from "./serving/making-thread.ts";
import { ServedSite } from "./serving/served-site.ts";
import { watchProject } from "./serving/watched.ts";
import { chooseSite } from "./site/choose-site.ts";

/** `npm start`: serves the site that is chosen, and follows every change. */
const SERVED = ".cache/serving";

await runCommand(async () => {
  endWhenInterrupted();
  const base = process.cwd();
  speakFirst(base);
  const port = portOf(chooseSite(base, process.argv.slice(2), ["content", "url"]));
  const content = contentPath();
  const output = content === PROJECT_CONTENT ? SERVED : `${SERVED}-${basename(content)}`;
  clearBrowsers();
  const aside = relative(base, await holdServed(base, output));
  const maker = new MakingThread(
    { base, content, output, aside },
    { shown: () => site.show(port), nothing: (code) => process.exit(code) },
  );
  const site = new ServedSite(output, (path) => maker.print(path));
  await watchProject(base, (paths) => maker.follow(paths));
  maker.follow([]);
});

/** The port behind `--port`, or none. @throws BuildError */
function portOf(words: readonly string[]): number | undefined {
  const [option, value, ...more] = words.flatMap((word) => word.split(/(?<=^--port)=/));
  if (option === undefined) return undefined;
  if (option !== "--port" || more.length > 0) throw new BuildError(say.siteStartOption({ option: more[0] ?? option }));
  const port = Number(value);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new BuildError(say.siteStartPort({ given: value ?? "" }));
  return port;
}

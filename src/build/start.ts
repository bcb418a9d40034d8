import { basename } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { contentPath, PROJECT_CONTENT } from "../input/files/content-folder.ts";
import * as say from "../words/messages.ts";
import { BuildError } from "./errors/build-error.ts";
import { runCommand } from "./errors/command.ts";
import { speakFirst } from "./library/first-words.ts";
import { chooseSite } from "./site/choose-site.ts";
import { serveWithoutPackets } from "./site/served-packets.ts";

/** `npm start`: has Eleventy serve the site that is chosen, and follow every change. */
const SERVED = ".cache/serving";
const WITHOUT_PACKETS = "--no-packets";

await runCommand(async () => {
  const base = process.cwd();
  speakFirst(base);
  const words = chooseSite(base, process.argv.slice(2), ["content", "url"]);
  const port = portOf(words.filter((word) => word !== WITHOUT_PACKETS));
  if (words.includes(WITHOUT_PACKETS)) {
    serveWithoutPackets();
    console.warn(say.startWithoutPackets());
  }
  const content = contentPath();
  const output = content === PROJECT_CONTENT ? SERVED : `${SERVED}-${basename(content)}`;
  const eleventy = new URL("../cmd.cjs", import.meta.resolve("@11ty/eleventy"));
  const options = ["--config=.eleventy.js", "--serve", "--quiet", `--output=${output}`];
  process.argv.splice(
    1,
    Infinity,
    fileURLToPath(eleventy),
    ...options,
    ...(port === undefined ? [] : [`--port=${port}`]),
  );
  await import(pathToFileURL(fileURLToPath(eleventy)).href);
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

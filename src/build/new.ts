import type { PictureAnswer } from "../core/beginning/answers.ts";
import { toDegrees } from "../core/units/angle.ts";
import { contentPath } from "../input/files/content-folder.ts";
import { viewKit } from "../output/views/kit-view.ts";
import { formatSize } from "../words/lengths.ts";
import * as say from "../words/messages.ts";
import { fixed } from "../words/numbers.ts";
import { printable } from "../words/printable.ts";
import { beginKit } from "./beginning/begin-kit.ts";
import { completeAnswers } from "./beginning/complete.ts";
import { optionNames, readFlags } from "./beginning/flags.ts";
import { runCommand } from "./errors/command.ts";
import { speakFirst } from "./library/first-words.ts";
import { chooseSite } from "./site/choose-site.ts";

/** A line of letters less tall than this, mm, has strokes that are hard to fold; an estimate. */
const LOW = 45;

/** `npm run new`: begins a kit from a picture, a word, an outline or an icon, complete and ready to be built. */
await runCommand(async () => {
  const base = process.cwd();
  speakFirst(base);
  const words = chooseSite(base, process.argv.slice(2), ["content"]);
  if (words.includes("--help") || words.includes("-h"))
    return console.log(printable(say.newHelp({ known: optionNames() })));
  const said = readFlags(words);
  const answers = await completeAnswers(said, process.stdin.isTTY === true && process.stdout.isTTY === true);
  const { kit, lit, write } = beginKit(base, answers);
  const { pattern } = kit;
  const folder = contentPath(`kits/${answers.slug}`);
  const lines = [
    say.newMade({
      folder,
      height: formatSize(pattern.fit.height, answers.units),
      opening: say.unitDegree({ degrees: fixed(toDegrees(pattern.fit.opening), 1) }),
      hours: viewKit(kit, []).figures.hours,
    }),
    ...(answers.light && !lit ? [say.newLightLeftOut()] : []),
    ...(isLow(answers.picture, pattern.fit.height)
      ? [say.newLowWord({ height: formatSize(pattern.fit.height, answers.units) })]
      : []),
    ...(said.book ? [] : [say.newUsualBook({ file: `${folder}/index.md` })]),
    say.newNextCheck({ kit: answers.slug }),
    say.newNext(),
  ];
  write();
  for (const line of lines) console.log(printable(line));
});

function isLow(picture: PictureAnswer, height: number): boolean {
  return picture.from === "word" && !/\\n|\n/.test(picture.text) && height < LOW;
}

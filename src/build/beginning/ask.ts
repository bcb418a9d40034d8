import { isCancel, select, text } from "@clack/prompts";
import {
  type BookAnswer,
  type LightAnswer,
  OUTLINES,
  type PictureAnswer,
  USUAL_BOOK,
} from "../../core/beginning/answers.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { bookOf, lightOf } from "./flags.ts";
import { iconDrawing, nearIcons } from "./icons.ts";

/** Asks for the picture. @throws BuildError where she gives up */
export async function askPicture(): Promise<PictureAnswer> {
  const from = answered(
    await select({
      message: say.newAskFrom(),
      options: [
        { value: "word", label: say.newAskFromWord() },
        { value: "outline", label: say.newAskFromOutline() },
        { value: "icon", label: say.newAskFromIcon() },
        { value: "file", label: say.newAskFromFile() },
      ] as const,
    }),
  );
  if (from === "word") return { from, text: await askText(say.newAskWord()) };
  if (from === "file") return { from, path: await askText(say.newAskFile()) };
  if (from === "icon") return { from, name: await askIcon() };
  const options = OUTLINES.map((value) => ({ value, label: say.newOutlineName({ outline: value }) }));
  return { from, name: answered(await select({ message: say.newAskOutline(), options })) };
}

/** Asks for a text that is not empty; `usual` stands there already. @throws BuildError where she gives up */
export async function askText(
  message: string,
  usual = "",
  refuse: (given: string) => void = () => {},
): Promise<string> {
  const given = await text({
    message,
    initialValue: usual,
    validate: (value = "") => (value.trim() === "" ? message : faultOf(() => refuse(value.trim()))),
  });
  return answered(given).trim();
}

/** Asks for the book's measures and leaves. @throws BuildError where she gives up */
export async function askBook(): Promise<BookAnswer> {
  const { leafHeight, leafWidth, blockThickness, leaves } = USUAL_BOOK;
  const usual = `${leafHeight} x ${leafWidth} x ${blockThickness}`;
  const measures = await askText(say.newAskBook(), usual, (given) => void bookOf(given, String(leaves)));
  const count = await askText(say.newAskLeaves(), String(leaves), (given) => void bookOf(measures, given));
  return bookOf(measures, count);
}

/** Asks for the light's measures. @throws BuildError where she gives up */
export async function askLight(): Promise<LightAnswer | undefined> {
  const given = await text({
    message: say.newAskLight(),
    placeholder: say.newAskLightNone(),
    validate: (value = "") => (value.trim() === "" ? undefined : faultOf(() => void lightOf(value))),
  });
  const measures = (answered(given) ?? "").trim();
  return measures === "" ? undefined : lightOf(measures);
}

async function askIcon(): Promise<string> {
  const word = await askText(say.newAskIcon());
  const options = nearIcons(word).map((value) => ({ value, label: value }));
  const name = answered(await select({ message: say.newAskIcon(), options }));
  iconDrawing(name);
  return name;
}

function answered<T>(answer: T): Exclude<T, symbol> {
  if (isCancel(answer)) throw new BuildError(say.newGaveUp());
  return answer as Exclude<T, symbol>;
}

function faultOf(read: () => void): string | undefined {
  try {
    read();
    return undefined;
  } catch (error) {
    if (error instanceof BuildError) return error.message;
    throw error;
  }
}

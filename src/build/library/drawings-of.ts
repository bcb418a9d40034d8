import { entriesIn, readText } from "../../input/files/read-file.ts";
import { foundIn, foundText } from "../../input/picture/found-in.ts";
import { readPicture } from "../../input/picture/read-picture.ts";
import * as say from "../../words/messages.ts";

/** A drawing in a kit's folder, and in words by what its shapes can be picked. */
interface DrawingOf {
  readonly name: string;
  readonly found: string;
}

/** The SVG files of a kit in the project `base` with the names and colours in them; without those where nothing can be picked. @throws KitError, FileError */
export function drawingsOf(base: string, slug: string): DrawingOf[] {
  const home = `content/kits/${slug}`;
  return entriesIn(base, home)
    .filter(({ name }) => name.toLowerCase().endsWith(".svg"))
    .map(({ name }) => {
      const text = readText({ base, file: `${home}/${name}`, kind: "picture", home });
      return { name, found: foundText(foundIn(readPicture(name, text, say.checkFieldPicture()))) };
    })
    .filter(({ found }) => found !== "");
}

import type { Kit } from "../../core/kit/kit.ts";
import type { Story } from "../../core/story/story.ts";
import type { Motif } from "../../core/window/motif.ts";
import { atPlace } from "../files/at-place.ts";
import { openFolder, pathBelow } from "../files/folders.ts";
import { pageText } from "../files/page-text.ts";
import { type Readings, readEach } from "../files/readings.ts";
import { type Strays, straysIn } from "../files/strays.ts";
import type { YamlFile } from "../files/yaml.ts";
import type { OwnFont } from "../fonts/own-fonts.ts";
import { filesOfPicture, filesOfSource } from "../layers/kit-picture.ts";
import { readStory } from "../story/read-story.ts";
import { partsOfFiles } from "./parts-of-files.ts";
import { kitText, stateKit } from "./state-kit.ts";

/** A kit as its folder states it, not yet computed. */
export interface StatedKit {
  readonly kit: Kit;
  /** Its index.md below the project, and where each field stands in it. */
  readonly file: string;
  readonly placeOf: YamlFile["placeOf"];
  /** What the picture holds that does not count, in sentences. */
  readonly pictureNotes: readonly string[];
  /** By what shapes of its drawings can be picked, a text for each file. */
  readonly offers: () => readonly string[];
  readonly story: Story;
  readonly strays: readonly Strays[];
}

/** Reads the folders of kits; one that cannot be read stops none of the others. */
export function readKits(
  folders: readonly string[],
  base: string,
  shelf: readonly Motif[],
  fonts: readonly OwnFont[] = [],
): Readings<StatedKit> {
  return readEach(folders, (folder) => readKit(folder, base, shelf, fonts));
}

/**
 * Reads a kit's folder in the project `base`, where `shelf` are motifs to pick from and `fonts` are those of the settings.
 * @throws KitError with one message for each thing wrong.
 */
export function readKit(
  folder: string,
  base: string,
  shelf: readonly Motif[],
  fonts: readonly OwnFont[] = [],
): StatedKit {
  const { slug, file } = openFolder(folder, base, "kit");
  const text = pageText({ base, file, home: pathBelow(base, folder) });
  const stated = kitText(slug, file, text);
  const { files, ...parts } = partsOfFiles({ base, folder }, { shelf, fonts });
  const { kit, pictureNotes } = stateKit(stated, parts);
  const { data, yaml } = stated;
  return atPlace(file, yaml, () => {
    const story = readStory({ base, folder }, file, text);
    const drawn = [...filesOfPicture(data.picture), ...(data.insert?.motifs ?? []).flatMap(filesOfSource)];
    const named = ["index.md", ...drawn, ...kit.photos.map((photo) => photo.file)];
    const strays = straysIn(base, pathBelow(base, folder), [...named, ...story.pictures.map((photo) => photo.file)]);
    return { kit, file, placeOf: yaml.placeOf, pictureNotes, offers: () => files.offers(), story, strays };
  });
}

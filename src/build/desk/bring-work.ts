import { randomUUID } from "node:crypto";
import sharp from "sharp";
import type { Answers } from "../../core/beginning/answers.ts";
import type { Brought, Icon, Look, Made } from "../../core/beginning/brought.ts";
import type { NewKitForm } from "../../input/beginning/new-kit-form.ts";
import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import { MOST_PIXELS } from "../../input/raster/raster-bounds.ts";
import { beginKit } from "../beginning/begin-kit.ts";
import { checkSlug } from "../beginning/complete.ts";
import { hurdlesOf } from "../beginning/hurdles.ts";
import { iconPath, nearIcons } from "../beginning/icons.ts";
import { lookAt } from "../beginning/look-at.ts";
import { sketchOf } from "../beginning/sketch-of.ts";
import { type Fitting, tryKit } from "../beginning/try-kit.ts";
import { writeFault, writeFaultText } from "./write-fault.ts";

/** So many pictures are kept at once, and so many bytes of them; who brings more loses the oldest. */
const MOST_KEPT = 6;
const MOST_BYTES = 150_000_000;

/** The longer side of a photograph as it is looked at, pixels. */
const SEEN_SIDE = 1400;

/** The name under which a new kit is looked at, before its folder has one that can be used. */
const NAMELESS = "new";

interface Kept {
  readonly name: string;
  readonly bytes: Buffer;
}

/** Pictures that were brought, and the kits that are begun with them, in the project `base`. */
export class BringWork {
  readonly #base: string;
  readonly #fonts: () => readonly OwnFont[];
  readonly #kept = new Map<string, Kept>();

  constructor(base: string, fonts: () => readonly OwnFont[]) {
    this.#base = base;
    this.#fonts = fonts;
  }

  /** Keeps a picture, and says what there is to see of it. */
  bring(name: string, given: Uint8Array): Brought {
    const bytes = Buffer.from(given.buffer, given.byteOffset, given.byteLength);
    try {
      const seen = lookAt(name, bytes);
      const upload = randomUUID();
      this.#keep(upload, { name, bytes });
      return { upload, name, seen };
    } catch (error) {
      return { hurdles: hurdlesOf(error, name) };
    }
  }

  /** A photograph in WebP, upright, without what its file knows of place and time; undefined where it is not kept. */
  async seen(upload: string): Promise<Uint8Array | undefined> {
    const kept = this.#kept.get(upload);
    if (!kept) return undefined;
    const size = { width: SEEN_SIDE, height: SEEN_SIDE, fit: "inside", withoutEnlargement: true } as const;
    const picture = sharp(kept.bytes, { limitInputPixels: MOST_PIXELS }).autoOrient().resize(size);
    return new Uint8Array(await picture.webp({ quality: 82 }).toBuffer());
  }

  /** What becomes of a picture as it is wished; undefined where it is not kept any more. */
  look(form: NewKitForm): Look | undefined {
    const answers = this.#answersOf({ ...form, slug: NAMELESS });
    if (!answers) return undefined;
    const look: { -readonly [Key in keyof Look]: Look[Key] } = {
      map: undefined,
      levels: [],
      notes: [],
      kit: undefined,
      lit: false,
      hurdles: [],
    };
    try {
      const { kit, lit } = this.#try(answers, form, (fitting) => {
        look.map = fitting.picture;
        look.levels = fitting.levels;
        look.notes = fitting.notes;
      });
      const { picture, ...rest } = kit.kit;
      return {
        ...look,
        map: picture,
        levels: rest.levels.map(({ name }) => name),
        kit: rest,
        lit: lit || !answers.light,
      };
    } catch (error) {
      return { ...look, hurdles: hurdlesOf(error, this.#nameOf(form)) };
    }
  }

  /** Makes the kit's folder, whole or not at all; undefined where its picture is not kept any more. */
  make(form: NewKitForm): Made | undefined {
    try {
      checkSlug(form.slug);
      const answers = this.#answersOf(form);
      if (!answers) return undefined;
      beginKit(this.#base, answers, { fonts: this.#fonts(), near: form.near }).write();
      return { slug: form.slug };
    } catch (error) {
      const fault = writeFault(error);
      if (fault) return { hurdles: [{ place: undefined, given: writeFaultText(fault), allowed: "", remedy: "" }] };
      return { hurdles: hurdlesOf(error, this.#nameOf(form)) };
    }
  }

  /** Icons whose names hold a word, or look like it. */
  icons(word: string): Icon[] {
    return nearIcons(word).map((name) => ({ name, path: iconPath(name) }));
  }

  #try(
    answers: Answers,
    { near }: NewKitForm,
    drawn: (seen: { picture: NonNullable<Look["map"]>; levels: string[]; notes: readonly string[] }) => void,
  ): Fitting {
    return tryKit(answers, sketchOf(answers.picture, this.#base), {
      near,
      fonts: this.#fonts(),
      drawn: ({ kit: { picture, levels }, pictureNotes }) =>
        drawn({ picture, levels: levels.map(({ name }) => name), notes: pictureNotes }),
    });
  }

  #answersOf({ picture, near: _, ...form }: NewKitForm): Answers | undefined {
    const rest = { ...form, light: form.light };
    if (picture.from === "word")
      return { ...rest, picture: { from: "word", text: picture.text, family: picture.font ?? undefined } };
    if (picture.from !== "brought") return { ...rest, picture };
    const kept = this.#kept.get(picture.upload);
    return kept && { ...rest, picture: { from: "bytes", ...kept, wish: picture.wish } };
  }

  #nameOf({ picture }: NewKitForm): string {
    return (picture.from === "brought" && this.#kept.get(picture.upload)?.name) || "picture";
  }

  #keep(upload: string, kept: Kept): void {
    this.#kept.set(upload, kept);
    const bytes = (): number => [...this.#kept.values()].reduce((sum, one) => sum + one.bytes.length, 0);
    while (this.#kept.size > 1 && (this.#kept.size > MOST_KEPT || bytes() > MOST_BYTES))
      this.#kept.delete([...this.#kept.keys()][0]!);
  }
}

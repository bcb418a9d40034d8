import type { Photo } from "../kit/kit.ts";

/** What an author tells below a front matter. */
export interface Story {
  /** Its file below the project, `content/kits/moon/index.md`. */
  readonly file: string;
  readonly markdown: string;
  /** The pictures in it, each once; their files stand beside it. */
  readonly pictures: readonly StoryPicture[];
  readonly links: readonly StoryLink[];
}

/** A picture of a story, with its line in the file, from 1. */
export interface StoryPicture extends Photo {
  readonly line: number;
}

/** A link of a story, as it was written. */
export interface StoryLink {
  readonly target: string;
  /** Its line in the file, from 1. */
  readonly line: number;
}

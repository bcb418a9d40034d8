import * as say from "../../words/messages.ts";
import type { KitView } from "../views/kit-view.ts";
import { type Html, html } from "./markup.ts";

/** What each closed chapter of a kit's page holds, in a few words. */
const GISTS = {
  cautions: ({ cautions }) => say.kitChapterCautions({ count: cautions.length }),
  supplies: ({ supplies }) => {
    const materials = supplies.filter(({ kind }) => kind === "material").length;
    return say.kitChapterSupplies({ materials, tools: supplies.length - materials });
  },
  preparation: ({ preparation }) => say.kitChapterPrepare({ batches: preparation.batches.length }),
  window: ({ counts }) => say.kitChapterWindow(counts),
  // Counted without the steps' drawings, which take long.
  steps: ({ work, figures: { hours } }) => say.kitChapterSteps({ steps: work.length, hours }),
  pattern: ({ counts }) => say.kitChapterPattern(counts),
  tacks: ({ tacks: { rows } }) => say.kitChapterTacks({ count: rows.length }),
} as const satisfies Readonly<Record<string, (view: KitView) => string>>;

/** A chapter of a kit's page that stands closed, by the name of its part. */
export type Chapter = keyof typeof GISTS;

type GistPart = `${Chapter}-gist`;

/** Parts that say what is in the chapters: `pattern-gist`. */
export const GIST_PARTS = Object.fromEntries(
  Object.entries(GISTS).map(([chapter, gist]) => [`${chapter}-gist`, (view: KitView) => html`${gist(view)}`]),
) as Readonly<Record<GistPart, (view: KitView) => Html>>;

import { join } from "node:path";
import { outlineOf } from "../../core/finder/outline.ts";
import { makeabilityOf } from "../../core/makeability/makeability.ts";
import { outcomeOf } from "../../core/makeability/outcome.ts";
import { isGraveTrouble, troublesOf } from "../../core/makeability/trouble.ts";
import { type AnyPatternedKit, isCut } from "../../core/pattern/patterned-kit.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { slugOf } from "../../input/files/folders.ts";
import { KitError } from "../../input/files/message.ts";
import { readKit, type StatedKit } from "../../input/kit/read-kit.ts";
import { viewAnyKit } from "../../output/views/any-kit-view.ts";
import { kitCard } from "../../output/views/kit-card.ts";
import { authorDoubt } from "../../words/findings/doubts.ts";
import { newTroubleTexts } from "../../words/findings/makeability.ts";
import { checkPhotos } from "../images/photos.ts";
import { checkLetters } from "../library/check-letters.ts";
import type { KitEntry, KitOutcome, KitReading } from "../library/kit-entry.ts";
import { patternAnyKit } from "../library/pattern-kit.ts";
import type { SiteFacts } from "../library/site-facts.ts";
import { listedPhotos, toldPhotos } from "../library/site-photos.ts";
import { kitTexts } from "../library/site-texts.ts";
import { smallLetters } from "../library/small-letters.ts";
import { codeKey } from "../store/code-keys.ts";
import { folderKey } from "../store/folder-key.ts";
import { keyOf } from "../store/store.ts";

/** Names all that a kit is read and computed from. */
export function kitKey(folder: string, facts: SiteFacts): string {
  return keyOf(
    "kit",
    slugOf(folder),
    codeKey(import.meta.filename),
    facts.key,
    folderKey(folder, join(facts.base, contentPath())),
  );
}

/** Reads a kit's folder and computes its pattern. */
export async function readKitEntry(folder: string, facts: SiteFacts): Promise<KitReading> {
  const { base, motifs, fonts } = facts;
  let stated: StatedKit;
  let kit: AnyPatternedKit;
  try {
    stated = readKit(folder, base, motifs, fonts);
    kit = patternAnyKit(stated);
  } catch (error) {
    if (!(error instanceof KitError)) throw error;
    return { read: undefined, broken: error.messages, letters: [], photos: [] };
  }
  const view = viewAnyKit(kit, facts.cautions);
  const texts = kitTexts(base, folder);
  const { wrong, warnings } = checkLetters(texts, [], fonts);
  const photos = [...listedPhotos(stated), ...toldPhotos(`/kits/${view.slug}/`, stated.story)];
  const entry: KitEntry = {
    slug: view.slug,
    key: kitKey(folder, facts),
    card: kitCard(view),
    outline: outlineOf(kit.kit),
    outcome: kitOutcome(kit),
    warnings: authorWarnings(view),
    notes: view.notes,
    letters: [...warnings, ...smallLetters(kit.kit, texts, fonts)],
    photos,
    story: stated.story,
    strays: stated.strays,
  };
  return { read: { entry, kit }, broken: [], letters: wrong, photos: await checkPhotos(base, photos) };
}

function kitOutcome(kit: AnyPatternedKit): KitOutcome {
  if (!isCut(kit)) return { quality: outcomeOf(kit.kit, kit, []), troubles: [] };
  const made = makeabilityOf(kit);
  const troubles = troublesOf(made);
  return {
    quality: outcomeOf(kit.kit, kit, troubles),
    troubles: newTroubleTexts(troubles.filter(isGraveTrouble), made, kit.kit),
  };
}

/** What may disappoint in a kit, for its author. */
function authorWarnings({ kit, findings }: Pick<AnyPatternedKit, "kit" | "findings">): string[] {
  return findings.map((doubt) => authorDoubt(doubt, kit));
}

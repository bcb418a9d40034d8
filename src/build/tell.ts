import { formatMessage } from "../input/files/format-message.ts";
import type { KitView } from "../output/views/kit-view.ts";
import { authorDoubt } from "../words/findings/doubts.ts";
import * as say from "../words/messages.ts";
import { currentLibrary } from "./library/current-library.ts";
import { reportClasses } from "./report.ts";

/** Tells the warnings of kits and classes. @throws MisfitError where a seat does not fit and that is to stop */
export function tellWarnings({ stopAtMisfit }: { readonly stopAtMisfit: boolean }): void {
  const { views, classes, warnings } = currentLibrary();
  for (const warning of warnings) console.warn(say.checkWarningInside({ warning }));
  for (const view of views) {
    for (const warning of authorWarnings(view)) console.warn(say.checkWarning({ name: view.slug, warning }));
  }
  reportClasses(classes, stopAtMisfit);
}

/** What may disappoint in a kit, for its author. */
export function authorWarnings({ kit, findings, notes }: Pick<KitView, "kit" | "findings" | "notes">): string[] {
  return [...findings.map((doubt) => authorDoubt(doubt, kit)), ...notes];
}

/** Tells what the library is without, as it cannot be built. */
export function tellLeftOut(): void {
  const { messages } = currentLibrary();
  if (messages.length > 0) console.error([say.checkLeftOut(), ...messages.map(formatMessage)].join("\n"));
}

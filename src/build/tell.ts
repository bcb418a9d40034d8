import { formatMessage } from "../input/files/format-message.ts";
import * as say from "../words/messages.ts";
import { currentLibrary } from "./current-library.ts";
import { reportClasses } from "./report.ts";

/** Tells the warnings of kits and classes. @throws MisfitError where a seat does not fit and that is to stop */
export function tellWarnings({ stopAtMisfit }: { readonly stopAtMisfit: boolean }): void {
  const { views, classes } = currentLibrary();
  for (const { kit, pattern, notes } of views) {
    for (const warning of [...pattern.warnings, ...notes]) console.warn(say.checkWarning({ name: kit.slug, warning }));
  }
  reportClasses(classes, stopAtMisfit);
}

/** Tells what the library is without, as it cannot be built. */
export function tellLeftOut(): void {
  const { messages } = currentLibrary();
  if (messages.length > 0) console.error([say.checkLeftOut(), ...messages.map(formatMessage)].join("\n"));
}

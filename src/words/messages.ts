// Made by `npm run words` from content/words/en: change the messages there.
import type { Word } from "./message.ts";
import { say } from "./speak.ts";

/** mm */
export const unitMm = (): string => say("unit-mm");
/** in */
export const unitIn = (): string => say("unit-in");
/** m */
export const unitM = (): string => say("unit-m");
/** ft */
export const unitFt = (): string => say("unit-ft");
/** {angle}° */
export const unitDegree = (args: { readonly angle: Word }): string => say("unit-degree", args);
/** {share}% */
export const unitPercent = (args: { readonly share: Word }): string => say("unit-percent", args);

import { deskStyle } from "../../core/bench/desk.ts";
import { placeNow } from "../../core/bench/moving.ts";
import { part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";
import { bindMarks, type Marks } from "./bench-marks.ts";
import { bindVoice } from "./bench-voice.ts";
import { faceOf } from "./face-of.ts";

/** What helps hands that hold a knife: the mark at hand on her ruler, and the device's voice. */
export interface Hands {
  readonly marks: Marks;
  /** Keys of the voice by their letters; none while it is silent, so that no letter does anything unwanted. */
  readonly letters: () => Readonly<Record<string, () => void>>;
  /** Says what lies on the bench, where that is not what was said last. `before` comes first, `work` is other work in words. */
  readonly tell: (before: readonly string[], work: string) => void;
}

export function bindHands(root: HTMLElement, host: BenchHost): Hands {
  const again = part<HTMLButtonElement>(root, "voice-again");
  const voice = bindVoice(part(root, "voice-place"), part<HTMLInputElement>(root, "voice"), (on) => {
    again.hidden = !on;
  });
  again.addEventListener("click", () => voice.again());
  const marks = bindMarks(root, host, (phrases) => voice.say(phrases));
  let told = "";
  return {
    marks,
    letters: () => (voice.on ? { r: voice.again, m: () => marks.step(1) } : {}),
    tell: (before, work) => {
      const { plan, progress } = host.desk;
      const { item } = placeNow(plan, progress);
      const phrases = [...before, ...(item ? [work] : faceOf(plan).heard(plan, progress.at, deskStyle(host.desk)))];
      if (told === phrases.join()) return;
      told = phrases.join();
      voice.say(phrases);
    },
  };
}

import { bindSwitch } from "./bench-switch.ts";

/** The device's voice. */
export interface Voice {
  readonly on: boolean;
  /** Says phrases in place of what is being said. */
  say(phrases: readonly string[]): void;
  /** Says the last ones once more. */
  again(): void;
}

/**
 * A voice that speaks while the switch is on, which it is not until she wants it. `place` holds the switch: it is hidden as long
 * as the device has no voice. `switched` is told whenever the voice begins or ends.
 */
export function bindVoice(place: HTMLElement, toggle: HTMLInputElement, switched: (on: boolean) => void): Voice {
  const speech = "speechSynthesis" in window ? window.speechSynthesis : undefined;
  let last: readonly string[] = [];
  let on = false;
  const speak = (): void => {
    speech?.cancel();
    if (on) for (const phrase of last) speech?.speak(utterance(phrase));
  };
  const follow = (): void => {
    place.hidden = !speech || speech.getVoices().length === 0;
    const wanted = toggle.checked && !place.hidden;
    if (wanted === on) return;
    on = wanted;
    switched(on);
    speak();
  };
  bindSwitch(toggle, "voice", follow);
  // Some browsers find their voices only after a while.
  speech?.addEventListener("voiceschanged", follow);
  window.addEventListener("pagehide", () => speech?.cancel());
  queueMicrotask(follow);
  return {
    get on() {
      return on;
    },
    say: (phrases) => {
      last = phrases;
      speak();
    },
    again: speak,
  };
}

/** In the page's language, a little slower than a reader reads. */
function utterance(phrase: string): SpeechSynthesisUtterance {
  const made = new SpeechSynthesisUtterance(phrase);
  made.lang = document.documentElement.lang;
  made.rate = 0.9;
  return made;
}

import { bindSwitch } from "./bench-switch.ts";

/** Two soft notes, Hz, each for so long, s. */
const NOTES = [523.25, 659.25];
const NOTE = 0.45;
const LOUD = 0.12;

/** A quiet tone where more has come about than when it was last asked; off until she switches it on. */
export function bindTone(toggle: HTMLInputElement): (cameAbout: number) => void {
  let before: number | undefined;
  bindSwitch(toggle, "tone", () => {
    if (toggle.checked) ring();
  });
  return (cameAbout) => {
    if (toggle.checked && before !== undefined && cameAbout > before) ring();
    before = cameAbout;
  };
}

function ring(): void {
  const context = new AudioContext();
  NOTES.forEach((pitch, i) => {
    const from = context.currentTime + i * NOTE;
    const [note, volume] = [context.createOscillator(), context.createGain()];
    note.frequency.value = pitch;
    volume.gain.setValueAtTime(0, from);
    volume.gain.linearRampToValueAtTime(LOUD, from + 0.05);
    volume.gain.linearRampToValueAtTime(0, from + NOTE);
    note.connect(volume).connect(context.destination);
    note.start(from);
    note.stop(from + NOTE);
    if (i === NOTES.length - 1) note.addEventListener("ended", () => context.close());
  });
}

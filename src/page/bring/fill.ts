import type { Html } from "../../output/parts/markup.ts";

const filled = new WeakMap<Element, string>();

/** Fills a part anew where it shows something else than `key` says; who was in it stays in it. Whether that was needed. */
export function fill(part: Element, key: string, make: () => Html): boolean {
  if (filled.get(part) === key) return false;
  filled.set(part, key);
  const { id } = document.activeElement ?? {};
  part.innerHTML = String(make());
  if (id) part.querySelector<HTMLElement>(`#${CSS.escape(id)}`)?.focus({ preventScroll: true });
  return true;
}

/** The part of a page that says what it is. @throws Error where there is none */
export function partOf(place: Element, name: string): HTMLElement {
  const found = place.querySelector<HTMLElement>(`[data-${name}]`);
  if (!found) throw new Error(`the table has no part "${name}"`);
  return found;
}

/** Sets a range, and says its figure; who pushes it at the moment has set it already. */
export function setRange(part: Element, name: string, value: number, said: string): void {
  const input = part.querySelector<HTMLInputElement>(`[data-range="${name}"]`);
  if (!input) return;
  if (Number(input.value) !== value) input.value = String(value);
  input.setAttribute("aria-valuetext", said);
  part.querySelector(`[data-said="${name}"]`)!.textContent = said;
}

/** Sets a field, unless somebody is typing in it. */
export function setField(input: HTMLInputElement, value: string): void {
  if (document.activeElement !== input && input.value !== value) input.value = value;
}

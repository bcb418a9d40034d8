/** Narrower than a sheet of a packet: a phone. */
const NARROW = "(max-width: 182mm)";

/** Closes the packet's bundles where the screen is too small for a sheet. */
export function foldBundles(): void {
  if (!matchMedia(NARROW).matches) return;
  for (const bundle of document.querySelectorAll<HTMLDetailsElement>("[data-bundle]")) bundle.open = false;
}

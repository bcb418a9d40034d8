/**
 * Lets links that follow the book carry its address parameters, empty for the kit's own book. The built packets are for that
 * one; for another the packet page lays itself out anew.
 */
export function carryBook(address: string): void {
  const own = document.querySelector<HTMLElement>("[data-own-packets]");
  const mine = document.querySelector<HTMLElement>("[data-my-packet]");
  if (!own || !mine) return;
  own.hidden = address !== "";
  mine.hidden = address === "";
  for (const link of document.querySelectorAll<HTMLAnchorElement>("a[data-to]")) {
    link.href = `${link.dataset.to}${address ? `?${address}` : ""}`;
  }
}

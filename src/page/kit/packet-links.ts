/**
 * Lets links that follow the book carry its address parameters, empty for the kit's own book. The built packets are for that
 * one; for another the packet page lays itself out anew.
 */
export function carryBook(address: string): void {
  for (const own of document.querySelectorAll<HTMLElement>("[data-own-packets]")) own.hidden = address !== "";
  for (const mine of document.querySelectorAll<HTMLElement>("[data-my-packet]")) mine.hidden = address === "";
  for (const link of document.querySelectorAll<HTMLAnchorElement>("a[data-to]")) {
    link.href = `${link.dataset.to}${address ? `?${address}` : ""}`;
  }
}

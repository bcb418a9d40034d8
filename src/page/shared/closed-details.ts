/** Opens everything while the page is printed; what the reader had closed is closed again afterwards. */
export function openForPrint(): void {
  let closed: HTMLDetailsElement[] = [];
  addEventListener("beforeprint", () => {
    closed = [...document.querySelectorAll<HTMLDetailsElement>("details:not([open])")];
    for (const one of closed) one.open = true;
  });
  addEventListener("afterprint", () => {
    for (const one of closed) one.open = false;
  });
}

/** Opens what a link leads into; browsers that do so by themselves have done it already. */
export function openTarget(): void {
  const open = (): void => {
    const target = document.getElementById(location.hash.slice(1));
    const closed = target?.closest<HTMLDetailsElement>("details:not([open])");
    if (!target || !closed) return;
    closed.open = true;
    target.scrollIntoView();
  };
  addEventListener("hashchange", open);
  open();
}

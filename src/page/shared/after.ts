/** Is done after a while, ms; without one as soon as the page has done what waits. */
export function after(ms = 0): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

/** So many covers are waited for at once: a browser has few lines to one server, and the rest of the desk needs them, too. */
const AT_ONCE = 2;

/** Has the covers of a list loaded, those in sight first: one that is not made yet comes when it is. */
export class Covers {
  readonly #sight = new IntersectionObserver((seen) => this.#see(seen), { rootMargin: "300px" });
  /** Addresses that were loaded last, by what they are covers of: their pictures are at hand. */
  readonly #known = new Map<string, string>();
  #waiting: HTMLImageElement[] = [];
  #loading = 0;

  /** Looks after the covers of a list that was written anew. */
  watch(list: HTMLElement): void {
    this.#sight.disconnect();
    this.#waiting = [];
    for (const cover of list.querySelectorAll<HTMLImageElement>("img[data-cover]")) {
      const address = cover.dataset["cover"]!;
      const known = this.#known.get(bookOf(address));
      // One that changed stays in sight till the new one is there.
      if (known !== undefined) {
        cover.src = known;
        cover.classList.add("there");
      }
      if (known !== address) this.#sight.observe(cover);
    }
  }

  close(): void {
    this.#sight.disconnect();
    this.#waiting = [];
  }

  #see(seen: readonly IntersectionObserverEntry[]): void {
    for (const { target, isIntersecting } of seen) {
      if (!isIntersecting) continue;
      this.#sight.unobserve(target);
      this.#waiting.push(target as HTMLImageElement);
    }
    this.#next();
  }

  #next(): void {
    const cover = this.#loading < AT_ONCE ? this.#waiting.shift() : undefined;
    if (!cover) return;
    this.#loading += 1;
    const address = cover.dataset["cover"]!;
    const ended = (isThere: boolean): void => {
      this.#loading -= 1;
      if (isThere) this.#known.set(bookOf(address), address);
      cover.classList.toggle("there", isThere);
      this.#next();
    };
    cover.addEventListener("load", () => ended(true), { once: true });
    cover.addEventListener("error", () => ended(false), { once: true });
    cover.src = address;
    this.#next();
  }
}

/** The address of a cover without what tells an old one apart. */
function bookOf(address: string): string {
  return address.replace(/\?.*$/, "");
}

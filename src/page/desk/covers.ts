/** So many covers are waited for at once: a browser has few lines to one server, and the rest of the desk needs them, too. */
const AT_ONCE = 2;

/** Has the covers of a list loaded, those in sight first: one that is not made yet comes when it is. */
export class Covers {
  readonly #sight = new IntersectionObserver((seen) => this.#see(seen), { rootMargin: "300px" });
  /** Addresses that were loaded: their pictures are at hand. */
  readonly #known = new Set<string>();
  #waiting: HTMLImageElement[] = [];
  #loading = 0;

  /** Looks after the covers of a list that was written anew. */
  watch(list: HTMLElement): void {
    this.#sight.disconnect();
    this.#waiting = [];
    for (const cover of list.querySelectorAll<HTMLImageElement>("img[data-cover]")) {
      const address = cover.dataset["cover"]!;
      if (this.#known.has(address)) {
        cover.src = address;
        cover.classList.add("there");
      } else this.#sight.observe(cover);
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
      if (isThere) this.#known.add(address);
      cover.classList.toggle("there", isThere);
      this.#next();
    };
    cover.addEventListener("load", () => ended(true), { once: true });
    cover.addEventListener("error", () => ended(false), { once: true });
    cover.src = address;
    this.#next();
  }
}

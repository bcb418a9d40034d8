/** What a page fetches once it is needed. */
export type Needed =
  | "corners"
  | "figures"
  | "file-maker"
  | "judge"
  | "kit-data"
  | "measure"
  | "packet"
  | "pieces"
  | "reasons"
  | "refit"
  | "round";

/** Something that a page needs could not be fetched, or is empty. */
export class LoadError extends Error {
  readonly needed: Needed;
  constructor(needed: Needed) {
    super(needed);
    this.needed = needed;
  }
}

/** Fetches a classic script once it is needed: a module does not load from a page opened from the disk. @throws LoadError */
export function loadScript(address: string, needed: Needed): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => {
      script.remove();
      reject(new LoadError(needed));
    });
    document.head.append(script);
  });
}

/** Fetches a classic script once it is needed: a module does not load from a page opened from the disk. @throws Error saying what is missing */
export function loadScript(address: string, what: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => reject(new Error(`${what} could not be loaded`)));
    document.head.append(script);
  });
}

/** Earlier versions kept progress of each kit and fit in the browser, under this and `<kit>/<fit>`. */
export const EARLIER = "leaflight-bench/1/";

/** The keys of what earlier versions kept and nothing took over yet, in order; none where the storage is closed. */
export function earlierKeys(): readonly string[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(EARLIER))
      .sort();
  } catch {
    return [];
  }
}

import { LoadError, type Needed } from "./load-script.ts";

declare function importScripts(address: string): void;

/** Fetches a classic script in a worker. @throws LoadError */
export async function loadBeside(address: string, needed: Needed): Promise<void> {
  try {
    importScripts(address);
  } catch {
    throw new LoadError(needed);
  }
}

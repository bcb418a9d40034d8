import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { BASE_NAME } from "./base-name.ts";

/** What a device keeps: pieces as they stand in a file, and the states of kits that their patterns are made from. */
interface Base extends DBSchema {
  pieces: { key: string; value: object };
  editions: { key: string; value: ArrayBuffer };
}

/** Opens the device's storage; undefined where the browser has none or keeps it closed. */
export async function openBase(): Promise<IDBPDatabase<Base> | undefined> {
  try {
    return await openDB<Base>(BASE_NAME, 1, {
      upgrade: (base) => {
        base.createObjectStore("pieces", { keyPath: "id" });
        base.createObjectStore("editions");
      },
      // A later version of the site waits for this page.
      blocking: (_, __, event) => (event.target as IDBDatabase).close(),
    });
  } catch {
    return undefined;
  }
}

export type PieceBase = IDBPDatabase<Base>;

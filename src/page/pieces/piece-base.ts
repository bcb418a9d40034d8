import { type DBSchema, type IDBPDatabase, openDB } from "idb";

/** What a device keeps: pieces as they stand in a file, and the states of kits that their patterns are made from. */
interface Base extends DBSchema {
  pieces: { key: string; value: object };
  editions: { key: string; value: ArrayBuffer };
}

/** Pieces are the device's, whatever site of this address they were begun on: a site that moves to another folder finds them. */
const NAME = "leaflight";

/** Opens the device's storage; undefined where the browser has none or keeps it closed. */
export async function openBase(): Promise<IDBPDatabase<Base> | undefined> {
  try {
    return await openDB<Base>(NAME, 1, {
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

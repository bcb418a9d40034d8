import * as say from "../../words/messages.ts";
import { KitError, type KitMessage } from "./message.ts";

/** As long as that, a name still has room for what is put behind it. */
const MOST_LETTERS = 100;

/** A name that becomes part of an address, on every host and disk the same one. @throws KitError */
export function checkAddressName(
  kind: "folder" | "page",
  name: string,
  about: Pick<KitMessage, "file" | "field" | "remedy">,
): void {
  if (isAddressName(name)) return;
  const given = say.checkAddressName({ kind, name });
  const allowed = say.checkAddressNames({ most: MOST_LETTERS });
  throw new KitError([{ line: undefined, column: undefined, ...about, given, allowed }]);
}

/** Whether a name may become part of an address. */
export function isAddressName(name: string): boolean {
  return name.length <= MOST_LETTERS && /^[a-z0-9]+(-[a-z0-9]+)*$/.test(name);
}

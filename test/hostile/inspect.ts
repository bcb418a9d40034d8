import { join } from "node:path";
import { checkPhotos } from "../../src/build/images/photos.ts";
import { openLibrary } from "../../src/build/library/library.ts";
import { KitError, type KitMessage } from "../../src/input/files/message.ts";
import { readKits } from "../../src/input/kit/read-kit.ts";

/** What is wrong with the project `base`; nothing where it can be built. @throws what is no message to an author */
export async function inspect(base: string): Promise<readonly KitMessage[]> {
  try {
    openLibrary(base);
    return await checkPhotos(base, readKits(join(base, "content/kits"), base, []).made);
  } catch (error) {
    if (error instanceof KitError) return error.messages;
    throw error;
  }
}

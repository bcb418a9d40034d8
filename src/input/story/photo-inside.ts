import * as say from "../../words/messages.ts";
import { checkPhotos, type KitFolder } from "../files/named-files.ts";
import { type Problem, problem } from "../files/problem.ts";

/** The file that a picture of a text shows. @throws ProblemError where it is no photo of the folder */
export function photoInside(kit: KitFolder, target: string, at: Problem["at"]): string {
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(target))
    throw problem(at, {
      given: say.storyPictureElsewhere({ address: target }),
      allowed: say.frontFileInside(),
      remedy: say.storySavePicture(),
    });
  const file = decoded(target);
  checkPhotos(kit, [{ file, at }]);
  return file;
}

/** Markdown writes spaces and letters beyond ASCII in addresses as `%20`. */
function decoded(target: string): string {
  try {
    return decodeURI(target);
  } catch {
    return target;
  }
}

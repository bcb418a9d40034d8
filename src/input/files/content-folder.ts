/** The folder of the project with the program's own words and guide, and with the content of its site. */
export const PROJECT_CONTENT = "content";

/** A run reads one site's content: like its language, it is the same for the whole run. */
let folder = PROJECT_CONTENT;

/** From now on the site's content is read from this folder: a path from the project, with slashes. */
export function readContentFrom(path: string): void {
  folder = path;
}

/** The folder of the site's content, or what stands below it, as messages name it: `content/kits`. */
export function contentPath(below = ""): string {
  return below === "" ? folder : `${folder}/${below}`;
}

/** A folder of words or of the guide: the site's own first, then the program's, once where they are the same. */
export function sharedPaths(below: string): string[] {
  return [...new Set([contentPath(below), `${PROJECT_CONTENT}/${below}`])];
}

/** The folder that a file stands in: one of content, or the project's folder that it is below. */
export function topFolder(file: string): string {
  return file === folder || file.startsWith(`${folder}/`) ? folder : file.split("/", 1)[0]!;
}

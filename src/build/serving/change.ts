/** What a changed file of the project is to the site that is served from it. */
export type Change =
  | { readonly kind: "kit"; readonly slug: string }
  /** Of the content, or of what frames it, beside kits. */
  | { readonly kind: "shared" }
  /** Of the scripts of pages, which are bundled from their files. */
  | { readonly kind: "scripts" }
  /** Of the program that runs. */
  | { readonly kind: "program" };

/** The program's folder of what runs in pages. */
export const PAGE_CODE = "src/page";

/** `path` is below the project, with slashes; `content` is the folder of the site's content. */
export function changeOf(path: string, content: string): Change {
  if (path.startsWith(`${content}/kits/`)) {
    const [slug, ...below] = path.slice(`${content}/kits/`.length).split("/");
    return slug && below.length > 0 ? { kind: "kit", slug } : { kind: "shared" };
  }
  if (path.startsWith(`${PAGE_CODE}/`)) return { kind: "scripts" };
  if (path.startsWith("src/") || path === ".eleventy.js") return { kind: "program" };
  return { kind: "shared" };
}

/** The parts of Eleventy's configuration that the site uses. */
export interface SiteConfig {
  addPlugin(plugin: unknown): void;
  setLibrary(name: string, library: unknown): void;
  setNunjucksEnvironmentOptions(options: { readonly throwOnUndefined: boolean }): void;
  addNunjucksGlobal(name: string, value: unknown): void;
  addFilter(name: string, filter: (...args: never[]) => unknown): void;
  addTransform(name: string, transform: (this: { page: { url: string | false } }, content: string) => string): void;
  addGlobalData(name: string, data: unknown): void;
  addTemplate(path: string, content: string, data: Record<string, unknown>): void;
  addPassthroughCopy(paths: Record<string, string>): void;
  addWatchTarget(path: string): void;
  setFrontMatterParsingOptions(options: Readonly<Record<string, unknown>>): void;
  addPreprocessor(
    name: string,
    extensions: string,
    process: (data: { readonly page: { readonly inputPath: string } }, content: string) => false | undefined,
  ): void;
  on(event: string, handler: (event: never) => unknown): void;
}

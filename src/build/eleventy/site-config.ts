/** The parts of Eleventy's configuration that the site uses. */
export interface SiteConfig {
  setUseTemplateCache(isUsed: boolean): void;
  addPlugin(plugin: unknown, options?: object): void;
  setNunjucksEnvironmentOptions(options: { readonly throwOnUndefined: boolean }): void;
  addNunjucksGlobal(name: string, value: unknown): void;
  addFilter(name: string, filter: (...args: never[]) => unknown): void;
  addTransform(name: string, transform: (this: { page: { url: string | false } }, content: string) => string): void;
  addTemplate(path: string, content: string, data: Record<string, unknown>): void;
  addPassthroughCopy(paths: Record<string, string>): void;
  addWatchTarget(path: string): void;
  on(event: string, handler: (event: never) => unknown): void;
}

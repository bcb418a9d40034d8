/** Precompiled Nunjucks templates, made by the bundler: importing it registers them. */
declare module "leaflight:templates" {}
declare module "nunjucks/browser/nunjucks-slim.js" {
  interface Environment {
    render(name: string, context: Record<string, unknown>): string;
  }
  const nunjucks: {
    Environment: new (loaders: readonly unknown[], options: { autoescape: boolean }) => Environment;
    PrecompiledLoader: new () => unknown;
  };
  export default nunjucks;
}

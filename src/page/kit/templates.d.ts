/** The templates that a page fills, as functions; made by the bundler. */
declare module "leaflight:templates" {
  export const templates: Readonly<Record<string, (context: Record<string, unknown>) => string>>;
}

declare module "@11ty/eleventy" {
  export default class Eleventy {
    constructor(input: string | undefined, output: string, options: { configPath?: string; quietMode?: boolean });
    readonly logger: {
      overrideLogger(logger: Readonly<Record<"log" | "info" | "warn" | "error", (line: string) => void>>): void;
    };
    readonly bench: { get(group: string): { setMinimumThresholdMs(least: number): void } };
    init(): Promise<void>;
    write(): Promise<unknown>;
  }
}
declare module "@11ty/eleventy-plugin-bundle" {
  const plugin: unknown;
  export default plugin;
}

import type { KitStageName } from "../kits/kit-stages.ts";

/** What was asked for: stages of kits, and classes, by their names. */
export interface Visited {
  readonly kits: ReadonlyMap<string, ReadonlySet<KitStageName>>;
  readonly classes: ReadonlySet<string>;
  /** Whether scripts of pages are among it. */
  readonly hasScripts: boolean;
}

/** What of a kit or of a class stands at a path below the site. */
const OF_KIT = /^\/(kits|author)\/([^/]+)\/(.*)$/;
const SCRIPT = /^\/assets\/scripts\/[\w-]+\.js$/;
const OF_CLASS = /^\/(?:private\/)?classes\/([^/]+)\//;

/** What makes the files of a kit's folder, by their paths in it. */
const STAGES: readonly (readonly [path: RegExp, stages: readonly KitStageName[]])[] = [
  [/\.pdf$/, ["pages", "pictures", "photos"]],
  [/^cut\//, ["cut files"]],
  [/^(photos|pictures)\//, ["photos"]],
  [/^[^/]+\.(svg|webp|jpg)$/, ["pictures"]],
  [/^[^/]+\.(json|csv|js)$/, ["data"]],
  [/(^|\/|\.html)$/, ["pages"]],
];

/** Pages and files of the served site that somebody waits for. */
export class Visits {
  #waiting: { readonly path: string; readonly settle: () => void }[] = [];

  /** Settles when what stands at a path is made, or cannot be. */
  add(path: string): Promise<void> {
    return new Promise((settle) => this.#waiting.push({ path, settle }));
  }

  get isWaiting(): boolean {
    return this.#waiting.length > 0;
  }

  /** All that is waited for; `settle` tells those who wait. */
  take(): Visited & { readonly settle: () => void } {
    const taken = this.#waiting;
    this.#waiting = [];
    const kits = new Map<string, Set<KitStageName>>();
    const classes = new Set<string>();
    for (const { path } of taken) {
      const [, of, slug, below] = OF_KIT.exec(path) ?? [];
      const [, name] = OF_CLASS.exec(path) ?? [];
      if (name !== undefined) classes.add(name);
      if (slug === undefined) continue;
      const stages = of === "author" ? (["author"] as const) : stagesOf(below!);
      kits.set(slug, new Set([...(kits.get(slug) ?? []), ...stages]));
    }
    const settle = (): void => {
      for (const one of taken) one.settle();
    };
    const hasScripts = taken.some(({ path }) => SCRIPT.test(path));
    return { kits, classes, hasScripts, settle };
  }
}

/** Whether what stands at a path may be made when it is asked for: it is of a kit, of a class, or a script. */
export function isVisitable(path: string): boolean {
  return OF_KIT.test(path) || OF_CLASS.test(path) || SCRIPT.test(path);
}

function stagesOf(below: string): readonly KitStageName[] {
  return STAGES.find(([path]) => path.test(below))?.[1] ?? [];
}

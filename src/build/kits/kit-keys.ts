import { resolve } from "node:path";
import type { Surroundings } from "../library/page-source.ts";
import { codeKey } from "../store/code-keys.ts";
import { keyOf } from "../store/store.ts";
import type { KitStage } from "./kit-stages.ts";

/** Where what the site knows of a kit is kept, by what names all that the kit is read from. */
export function entryKey(kit: string): string {
  return keyOf("entry", kit);
}

/** What a stage makes of a kit, as a part of a site. */
export function kitPart(slug: string, stage: string): string {
  return `kits/${slug} ${stage}`;
}

/** Where what a stage made of a kit is kept. */
export function stageKey({ name, code, seesSite }: KitStage, kit: string, surroundings: Surroundings): string {
  const modules = code.modules.map((module) => resolve(import.meta.dirname, module));
  return keyOf("kit stage", name, kit, codeKey(modules, code.folders), seesSite ? surroundings : undefined);
}

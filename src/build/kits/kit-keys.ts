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

/** Where what a stage made of a kit is kept, by the key of the kit. */
export type StageKey = (stage: KitStage, kit: string) => string;

/** Keys of what stages make now: the code and the folders of a stage are looked at once, when it is first asked for. */
export function stageKeys(surroundings: Surroundings): StageKey {
  const codes = new Map<string, string>();
  return ({ name, code, seesSite }, kit) => {
    const made = codes.get(name) ?? codeOf(code);
    codes.set(name, made);
    return keyOf("kit stage", name, kit, made, seesSite ? surroundings : undefined);
  };
}

function codeOf({ modules, folders }: KitStage["code"]): string {
  return codeKey(
    modules.map((module) => resolve(import.meta.dirname, module)),
    folders,
  );
}

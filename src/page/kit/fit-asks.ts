import type { Needed } from "../shared/load-script.ts";
import type { FitMaker } from "./fit-maker.ts";

/** What a page asks of who makes it. */
export type Asked = "fit" | "part" | "match" | "file" | "front";

/** What is asked with, and what comes of it. */
export type AskedWith<K extends Asked> = Parameters<FitMaker[K]>;
export type MadeOf<K extends Asked> = Awaited<ReturnType<FitMaker[K]>>;

/** What a page tells its worker, several at once; the first tells where the kit's data are. */
export type ToWorker =
  | { readonly data: string }
  | { readonly id: number; readonly turn: number; readonly ask: Asked; readonly with: readonly unknown[] };

/** A worker's answer: what was made; what could not be loaded; or neither, and the page makes it itself. */
export interface FromWorker {
  readonly id: number;
  readonly made?: unknown;
  readonly needed?: Needed;
  readonly failed?: true;
}

/** Does what is asked. */
export function makeAsked(maker: FitMaker, ask: Asked, told: readonly unknown[]): unknown {
  return (maker[ask] as (...told: readonly unknown[]) => unknown).apply(maker, [...told]);
}

import { readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { gzipSync } from "node:zlib";

/** A script that a page names, and its bytes after gzip -9. */
export interface ScriptSize {
  readonly path: string;
  readonly bytes: number;
}

/** The scripts that a built page loads by itself. Paths below the site's folder. */
export function scriptsOf(site: string, page: string): ScriptSize[] {
  const html = readFileSync(join(site, page), "utf8");
  return [...html.matchAll(/<script[^>]*\ssrc="([^"]+)"/g)].map(([, address]) => {
    const path = normalize(join(dirname(page), address!));
    return { path, bytes: bytesOf(site, path) };
  });
}

/** Bytes of a file of the site after gzip -9. */
export function bytesOf(site: string, path: string): number {
  return gzipSync(readFileSync(join(site, path)), { level: 9 }).length;
}

export function totalOf(scripts: readonly ScriptSize[]): number {
  return scripts.reduce((sum, script) => sum + script.bytes, 0);
}

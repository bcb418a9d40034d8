import type { FoundBrowser } from "./find-browser.ts";

/** What every browser is started with: no traffic of its own, and letters at their own widths. */
export const QUIET: readonly string[] = [
  "--hide-scrollbars",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-domain-reliability",
  "--disable-sync",
  "--no-first-run",
  "--no-pings",
  "--font-render-hinting=none",
];

/** What keeps a browser that prints from any network: no name and no address leads anywhere. */
export const WALLED: readonly string[] = [
  "--disable-gpu",
  "--host-resolver-rules=MAP * ~NOTFOUND",
  "--no-proxy-server",
  "--force-webrtc-ip-handling-policy=disable_non_proxied_udp",
  "--disable-print-preview",
];

/** The packaged browser is one without a window. */
export function headlessOf({ source }: FoundBrowser): true | "shell" {
  return source === "packaged" ? "shell" : true;
}

/** Why a browser's sandbox cannot be used here; undefined where it can be tried. */
export function noSandbox(): "root" | undefined {
  return process.platform === "linux" && process.getuid?.() === 0 ? "root" : undefined;
}

import { lstatSync, readFileSync, realpathSync } from "node:fs";
import { extname, join, relative, sep } from "node:path";
import type { HTTPRequest, Page } from "puppeteer";

/** Where pages stand while they are printed: a name that no network has (RFC 2606). */
export const PACKET_ORIGIN = "https://packet.invalid";

/** Where the page rule stands; no page of a site has such a name. */
const RULE = "/.packet-rule.css";

/** Beside the page's own policy: a printed page shows files of its site and does nothing. */
const POLICY =
  "default-src 'none'; img-src 'self' data:; style-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none'";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".jpeg": "image/jpeg",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".woff2": "font/woff2",
};

/** Kinds of requests without which a page prints incomplete; a browser asks for icons, too. */
const SHOWN: readonly string[] = ["document", "stylesheet", "image", "font", "media"];

/**
 * A wall around a page that is printed: it gets files of the built site and nothing else, neither from the disk nor from a network,
 * and its scripts do not run. What it asked for in vain is kept.
 */
export class Wall {
  readonly #page: Page;
  readonly #site: string;
  #address = "";
  #rule = "";
  #blocked = new Set<string>();

  private constructor(page: Page, site: string) {
    this.#page = page;
    this.#site = site;
  }

  /** Puts a page that shows nothing yet behind the wall. */
  static async around(page: Page, output: string): Promise<Wall> {
    const wall = new Wall(page, realpathSync(output));
    wall.#listen();
    await page.setJavaScriptEnabled(false);
    await page.setOfflineMode(true);
    await page.setRequestInterception(true);
    page.on("request", (request) => {
      // A browser that ends takes its requests along.
      wall.#answer(request).catch(() => undefined);
    });
    return wall;
  }

  /** Opens a page of the site with a rule for its paper. */
  async open(file: string, rule: string): Promise<void> {
    this.#blocked = new Set();
    this.#rule = rule;
    const path = relative(this.#site, realpathSync(file)).split(sep).map(encodeURIComponent).join("/");
    this.#address = `${PACKET_ORIGIN}/${path}`;
    await this.#page.goto(this.#address, { waitUntil: "load" });
  }

  /** What the page asked for and did not get. */
  blocked(): readonly string[] {
    return [...this.#blocked];
  }

  /**
   * What the page's policies stop never becomes a request: the browser tells of it. Heard through the page's own session, as
   * opening another takes print media back.
   */
  #listen(): void {
    this.#page.on("issue", ({ details }) => {
      const found = details.contentSecurityPolicyIssueDetails;
      if (found && !found.violatedDirective.startsWith("script-src")) this.#blocked.add(found.blockedURL ?? "inline");
    });
    this.#page.on("console", (message) => {
      const [, address] = /Not allowed to load local resource: (.*)/.exec(message.text()) ?? [];
      if (address !== undefined) this.#blocked.add(address);
    });
  }

  async #answer(request: HTTPRequest): Promise<void> {
    const address = new URL(request.url());
    if (address.protocol === "data:") return request.continue();
    const strange = request.isNavigationRequest() && address.href !== this.#address;
    const body = address.origin === PACKET_ORIGIN && !strange ? this.#bodyOf(address.pathname) : undefined;
    if (body === undefined) {
      if (address.origin !== PACKET_ORIGIN || strange || SHOWN.includes(request.resourceType()))
        this.#blocked.add(address.href);
      return request.abort("blockedbyclient");
    }
    const headers = { "content-security-policy": POLICY, "x-content-type-options": "nosniff" };
    const contentType = TYPES[extname(address.pathname)] ?? "application/octet-stream";
    return request.respond({ status: 200, contentType, headers, body });
  }

  /** A file of the site; nothing that lies or leads outside. */
  #bodyOf(pathname: string): Buffer | string | undefined {
    if (pathname === RULE) return this.#rule;
    try {
      const file = realpathSync(join(this.#site, decodeURIComponent(pathname)));
      if (!file.startsWith(this.#site + sep) || !lstatSync(file).isFile()) return undefined;
      const body = readFileSync(file);
      return extname(file) === ".html" ? withRule(body.toString("utf8")) : body;
    } catch {
      return undefined;
    }
  }
}

/** The page rule comes last in the head, after the page's own style sheets. */
function withRule(html: string): string {
  return html.replace("</head>", `<link rel="stylesheet" href="${RULE}"></head>`);
}

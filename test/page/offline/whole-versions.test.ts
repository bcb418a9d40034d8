import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { FakeHost, type Held, SITE, siteVersion, workerOf } from "./fake-host.ts";

const FILES = {
  "index.html": "catalogue",
  "offline.html": "not here yet",
  "assets/scripts/refit.js": "fit",
  "kits/gull/index.html": "gull",
  "kits/gull/kit-data.js": "data",
  "kits/gull/bench/index.html": "bench",
  "kits/gull/packet-a4.pdf": "%PDF gull",
  "kits/moon/index.html": "moon",
  "kits/moon/kit-data.js": "moon data",
  "kits/herring/index.html": "herring",
  "kits/herring/kit-data.js": "herring data",
  "kits/herring/bench/index.html": "herring bench",
  "assets/scripts/corner.js": "folds",
  "assets/scripts/corner-bench.js": "folds at the bench",
};
const OLD = siteVersion(FILES);
const NEW = siteVersion(
  Object.fromEntries(
    Object.entries(FILES).map(([path, text]) => [path, path.startsWith("kits/") ? `${text} 2` : text]),
  ),
);
const GULL = Object.keys(OLD.files).filter((path) => path.startsWith("kits/gull/") && !path.endsWith(".pdf"));
const PACKET = "kits/gull/packet-a4.pdf";

/** The gate of an open network: it answers everything with its own page. */
const PORTAL = () => new Response("<html>Please sign in</html>", { headers: { "content-type": "text/html" } });

let host: FakeHost;

beforeEach(() => {
  host = new FakeHost();
  host.held = OLD.files;
  host.install();
});

afterEach(() => {
  vi.unstubAllGlobals();
});

const request = (path: string, from = "", mode: RequestMode = "navigate"): Request =>
  ({ url: `${SITE}${path}`, mode, referrer: from && `${SITE}${from}`, method: "GET" }) as Request;

async function given(answers: ReturnType<typeof workerOf>["answers"], asked: Request): Promise<string> {
  const work: Promise<unknown>[] = [];
  const path = asked.url.slice(SITE.length);
  const response = await answers.answer(asked, path, (one) => work.push(one));
  await Promise.all(work);
  if (response.type === "error") return "error";
  return response.headers.get("location")?.slice(SITE.length) ?? response.text();
}

describe("a kit that is folded by corners", () => {
  it("is kept with the scripts that fold them, and its bench is there without a host", async () => {
    const worker = workerOf(OLD);
    await worker.kits.keep("herring", false);
    expect(host.paths).toContain("assets/scripts/corner.js");
    host.held = undefined;
    expect((await worker.kits.kept()).kits).toEqual(["herring"]);
    expect(await given(worker.answers, request("kits/herring/bench/index.html"))).toBe("herring bench");
    const script = request("assets/scripts/corner-bench.js", "kits/herring/bench/index.html", "no-cors");
    expect(await given(worker.answers, script)).toBe("folds at the bench");
  });

  it("is not whole without them", async () => {
    const worker = workerOf(OLD);
    await worker.kits.keep("herring", false);
    for (const address of [...host.kept.keys()]) if (address.includes("corner-bench")) host.kept.delete(address);
    expect((await workerOf(OLD).kits.kept()).kits).toEqual([]);
  });
});

describe("a kit that is kept without its packet", () => {
  let old: ReturnType<typeof workerOf>;
  beforeEach(async () => {
    old = workerOf(OLD);
    await old.kits.keep("gull", false);
  });

  it("is kept whole, with its list, and nothing else is", async () => {
    expect(host.paths).toEqual(GULL.toSorted());
    expect(await old.kits.kept()).toEqual({
      kits: ["gull"],
      all: [],
      editions: { gull: { version: "1.2", date: "2026-05-01" } },
    });
  });

  it("gives the packet of its own version from the host, and does not keep it", async () => {
    expect(await given(old.answers, request(PACKET))).toBe("%PDF gull");
    expect(host.paths).not.toContain(PACKET);
  });

  it.each<[string, Readonly<Record<string, Held>> | undefined, string]>([
    ["a newer version", NEW.files, "newer"],
    ["a captive portal", Object.fromEntries(Object.keys(OLD.files).map((path) => [path, PORTAL])), "wrong"],
    ["a page in place of the packet", { ...OLD.files, [PACKET]: PORTAL }, "wrong"],
    ["a truncated packet", { ...OLD.files, [PACKET]: "%PDF g" }, "wrong"],
    ["an error of the host", { ...OLD.files, [PACKET]: () => new Response("", { status: 500 }) }, "wrong"],
    ["nothing at the packet's address", { ...OLD.files, [PACKET]: () => new Response("", { status: 404 }) }, "wrong"],
    ["a host that has nothing of the site", {}, "gone"],
    ["a site that was taken away for good", { "sw.js": () => new Response("", { status: 410 }) }, "gone"],
    ["a host that sends elsewhere", { "sw.js": () => Response.redirect("https://gate.example/") }, "wrong"],
    ["no host", undefined, "unreachable"],
  ])("says why it gives no packet: %s", async (_, held, why) => {
    host.held = held;
    expect(await given(old.answers, request(PACKET))).toBe(
      `offline.html?page=${encodeURIComponent(PACKET)}&why=${why}`,
    );
    expect(await given(old.answers, request(PACKET, "kits/gull/index.html", "cors"))).toBe("error");
    expect(host.paths).toEqual(GULL.toSorted());
  });

  it("gives page, data and bench of its version, whatever the host has meanwhile, and asks it nothing", async () => {
    host.held = NEW.files;
    host.asked.length = 0;
    for (const path of ["index.html", "kit-data.js", "bench/index.html"])
      expect(await given(old.answers, request(`kits/gull/${path}`, "kits/gull/index.html"))).toBe(
        OLD.files[`kits/gull/${path}`],
      );
    expect(host.asked).toEqual([]);
  });

  it("keeps no packet of another version, and says which file it is", async () => {
    host.held = NEW.files;
    await expect(old.kits.keep("gull", true)).rejects.toMatchObject({
      failure: { kind: "other-version", path: PACKET },
    });
    expect((await old.kits.kept()).all).toEqual([]);
  });

  it("keeps nothing of a packet for which there is no room, and stays whole", async () => {
    host.room = 0;
    await expect(old.kits.keep("gull", true)).rejects.toMatchObject({ name: "QuotaExceededError" });
    expect(host.paths).toEqual(GULL.toSorted());
    expect((await old.kits.kept()).kits).toEqual(["gull"]);
  });
});

describe("a kit that is not kept whole", () => {
  it.each([0, 1, 2, 3])("gives back what was added when there is room for %d files", async (room) => {
    host.room = room;
    const { kits } = workerOf(OLD);
    await expect(kits.keep("gull", false)).rejects.toMatchObject({ name: "QuotaExceededError" });
    expect(host.paths).toEqual([]);
    expect((await kits.kept()).kits).toEqual([]);
  });

  it("is fetched on where it was cut off", async () => {
    const { kits, answers } = workerOf(OLD);
    host.held = { ...OLD.files, "kits/gull/bench/index.html": () => Response.error() };
    await expect(kits.keep("gull", false)).rejects.toThrow();
    expect((await kits.kept()).kits).toEqual([]);
    // Meanwhile it has what was kept only where the host has nothing.
    host.held = undefined;
    expect(await given(answers, request("kits/gull/kit-data.js", "kits/gull/index.html", "no-cors"))).toBe("data");
    host.held = OLD.files;
    host.asked.length = 0;
    await kits.keep("gull", false);
    expect(host.asked).toEqual(["kits/gull/bench/index.html"]);
    expect((await kits.kept()).kits).toEqual(["gull"]);
  });

  it("has page and data from the host, and the catalogue has what it kept of it", async () => {
    const { answers } = workerOf(OLD);
    expect(await given(answers, request("kits/moon/kit-data.js", "index.html", "no-cors"))).toBe("moon data");
    host.held = NEW.files;
    expect(await given(answers, request("kits/moon/index.html"))).toBe("moon 2");
    expect(await given(answers, request("kits/moon/kit-data.js", "kits/moon/index.html", "no-cors"))).toBe(
      "moon data 2",
    );
    expect(await given(answers, request("kits/moon/kit-data.js", "index.html", "no-cors"))).toBe("moon data");
  });

  it("stands on the page for what is absent without network", async () => {
    const { answers } = workerOf(OLD);
    host.held = undefined;
    expect(await given(answers, request("kits/moon/index.html"))).toBe(
      `offline.html?page=${encodeURIComponent("kits/moon/index.html")}`,
    );
  });
});

import { Hono } from "hono";
import { beforeEach, describe, expect, it } from "vitest";
import type { BringRoom } from "../../../src/build/desk/bring-room.ts";
import { bringRoute, newKitRoutes } from "../../../src/build/desk/bring-routes.ts";
import { bounded } from "../../../src/build/desk/gate.ts";
import { USUAL_BOOK } from "../../../src/core/beginning/answers.ts";

const UPLOAD = "00000000-0000-4000-8000-000000000000";

let asked: unknown[] = [];
let answer: unknown;
let app: Hono;

beforeEach(() => {
  asked = [];
  answer = undefined;
  const room =
    (name: string) =>
    (...given: unknown[]) => {
      asked.push([name, ...given]);
      return Promise.resolve(answer);
    };
  const names = ["bring", "seen", "look", "make", "icons"] as const;
  const bring = Object.fromEntries(names.map((name) => [name, room(name)])) as unknown as BringRoom;
  app = new Hono();
  bringRoute(app, { bring });
  app.use(bounded(10_000));
  newKitRoutes(app, { bring });
});

function bytes(count: number, type = "application/octet-stream"): RequestInit {
  return { method: "POST", headers: { "content-type": type }, body: new Uint8Array(count) };
}

function posted(body: object): RequestInit {
  return { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) };
}

const FORM = {
  slug: "heart",
  title: "Heart",
  picture: { from: "outline", name: "heart" },
  book: USUAL_BOOK,
  units: "mm",
  draft: false,
};

describe("bringRoute(app, desk)", () => {
  it("takes a picture that is larger than any text", async () => {
    answer = { hurdles: [] };
    const response = await app.request("/api/new/bring?name=gull.jpg", bytes(3_000_000));
    expect([response.status, await response.json()]).toEqual([200, { hurdles: [] }]);
    const [[, name, taken] = []] = asked as [string, string, Uint8Array][];
    expect([name, taken!.length]).toEqual(["gull.jpg", 3_000_000]);
  });

  it.each<[string, string, RequestInit, number]>([
    ["more than a picture may have", "?name=gull.jpg", bytes(64_000_001), 413],
    ["no name", "", bytes(10), 400],
    ["a name that no disk has", `?name=${"a".repeat(300)}`, bytes(10), 400],
    ["another type", "?name=gull.jpg", bytes(10, "image/jpeg"), 400],
  ])("refuses %s", async (_, query, request, status) => {
    expect((await app.request(`/api/new/bring${query}`, request)).status).toBe(status);
    expect(asked).toEqual([]);
  });
});

describe("newKitRoutes(app, desk)", () => {
  it("says what is late and what is gone", async () => {
    const told = async (path: string, given: unknown): Promise<unknown> => {
      answer = given;
      return (await app.request(path, posted(FORM))).json();
    };
    expect(await told("/api/new/look", "late")).toEqual({ late: true });
    expect(await told("/api/new/look", undefined)).toEqual({ gone: true });
    expect(await told("/api/new/look", { levels: [] })).toEqual({ look: { levels: [] } });
    expect(await told("/api/new", undefined)).toEqual({ gone: true });
    expect(await told("/api/new", { slug: "heart" })).toEqual({ slug: "heart" });
  });

  it.each<[string, object]>([
    ["nothing", {}],
    ["a file of the disk for a picture", { ...FORM, picture: { from: "file", path: "/etc/passwd" } }],
    ["a key of its own", { ...FORM, folder: "/tmp" }],
    ["a book of no size", { ...FORM, book: { ...USUAL_BOOK, leafHeight: 1e9 } }],
    ["a name of an upload that is none", { ...FORM, picture: { from: "brought", upload: "../x", wish: {} } }],
    [
      "more marks than a list has",
      {
        ...FORM,
        picture: {
          from: "brought",
          upload: UPLOAD,
          wish: { marks: Array.from({ length: 61 }, () => ({ name: "a", selector: "a", level: 1 })) },
        },
      },
    ],
  ])("takes no form with %s", async (_, form) => {
    for (const path of ["/api/new", "/api/new/look"]) expect((await app.request(path, posted(form))).status).toBe(400);
    expect(asked).toEqual([]);
  });

  it("refuses a form that is larger than a text", async () => {
    const response = await app.request("/api/new/look", posted({ ...FORM, title: "a".repeat(20_000) }));
    expect([response.status, asked]).toEqual([413, []]);
  });

  it("shows a photograph that is kept, and icons", async () => {
    answer = new Uint8Array([1, 2]);
    const seen = await app.request(`/api/new/seen?upload=${UPLOAD}`);
    expect([seen.status, seen.headers.get("content-type")]).toEqual([200, "image/webp"]);
    answer = undefined;
    expect((await app.request(`/api/new/seen?upload=${UPLOAD}`)).status).toBe(404);
    expect((await app.request("/api/new/seen?upload=..%2F..%2Fx")).status).toBe(404);
    expect(asked.length).toBe(2);
    answer = [];
    expect(await (await app.request("/api/new/icons?word=boat")).json()).toEqual({ icons: [] });
    expect(asked.at(-1)).toEqual(["icons", "boat"]);
  });
});

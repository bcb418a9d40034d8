import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { told } from "../../../../src/input/desk/desk-message.ts";
import type { DeskEntry, PictureAnswer, PictureAsk, TextAnswer } from "../../../../src/input/desk/protocol.ts";
import { drawText } from "../../../../src/input/kit/draw-text.ts";
import { readMotifs } from "../../../../src/input/kit/read-motifs.ts";
import { type ClassServer, type KitsThere, loadClass } from "../../../../src/page/desk/seats/load-class.ts";
import { FIXTURES } from "../../../input/kit/kit-folders.ts";

const lent = { shelf: readMotifs(FIXTURES).made, fonts: [] };

const entry = (kind: "kits" | "classes", slug: string, title: string) =>
  ({ slug, title, file: `content/${kind}/${slug}/index.md` }) as DeskEntry;

/** The desk's server, as far as it reads and draws; `drawn` are names of kits in the order in which they were asked for. */
function server(front: string) {
  const drawn: string[] = [];
  const asked: ClassServer = {
    text: async (file): Promise<TextAnswer> => {
      const text = file.includes("/classes/") ? front : readFileSync(join(FIXTURES, file), "utf8");
      return { file, text, mark: "1" };
    },
    post: async <T>(_: string, body: object): Promise<T> => {
      const { slug, text } = body as PictureAsk;
      drawn.push(slug);
      const made = drawText(slug, text, { base: FIXTURES, folder: join(FIXTURES, "content/kits", slug) }, lent);
      const answer = "drawn" in made ? { drawn: made.drawn } : { messages: told(made.messages) };
      return { ...answer, shapes: [] } satisfies PictureAnswer as T;
    },
  };
  return { asked, drawn };
}

const kits = [entry("kits", "harbour-moon", "Harbour Moon"), entry("kits", "little-gull", "Little Gull")];

describe("loadClass(entry, all, server, waits)", () => {
  it("says before each kit which one it is, and how many are there", async () => {
    const front = "---\ntitle: An evening\nkits: [little-gull, harbour-moon]\nseats: 2\n---\n";
    const { asked, drawn } = server(front);
    const waits: (KitsThere & { readonly drawn: number })[] = [];
    const all = { kits, classes: [] };
    const loaded = await loadClass(entry("classes", "evening", "An evening"), all, asked, (far) =>
      waits.push({ ...far, drawn: drawn.length }),
    );
    expect(waits).toEqual([
      { kit: "Harbour Moon", there: 0, of: 2, drawn: 0 },
      { kit: "Little Gull", there: 1, of: 2, drawn: 1 },
    ]);
    expect(loaded!.kits.map(({ slug }) => slug)).toEqual(drawn);
    expect([...loaded!.kitFiles.keys()]).toEqual(drawn);
    expect(loaded!.away).toEqual([]);
  });

  it("names kits that are not there, and waits for none of them", async () => {
    const { asked, drawn } = server("---\ntitle: An evening\nkits: [sun]\n---\n");
    const waits: KitsThere[] = [];
    const all = { kits, classes: [] };
    const loaded = await loadClass(entry("classes", "evening", "An evening"), all, asked, (far) => waits.push(far));
    expect([waits, drawn, loaded!.away, loaded!.kits]).toEqual([[], [], ["sun"], []]);
  });
});

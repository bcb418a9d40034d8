import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, vi } from "vitest";
import { told } from "../../../../src/input/desk/desk-message.ts";
import type { PictureAnswer } from "../../../../src/input/desk/protocol.ts";
import { drawText } from "../../../../src/input/kit/draw-text.ts";
import { readKit } from "../../../../src/input/kit/read-kit.ts";
import { readMotifs } from "../../../../src/input/kit/read-motifs.ts";
import { DeskKit } from "../../../../src/page/desk/draft/desk-kit.ts";
import { FIXTURES } from "../../../input/kit/kit-folders.ts";

const lent = { shelf: readMotifs(FIXTURES).made, fonts: [] };
const folder = join(FIXTURES, "content/kits/harbour-moon");
const text = readFileSync(join(folder, "index.md"), "utf8");
const found = { file: "content/kits/harbour-moon/index.md", text, mark: "1" };

/** The desk's server, as far as it draws. */
function answer(asked: string): PictureAnswer {
  const drawing = drawText("harbour-moon", asked, { base: FIXTURES, folder }, lent);
  const sent = "drawn" in drawing ? { drawn: drawing.drawn } : { messages: told(drawing.messages) };
  return JSON.parse(JSON.stringify({ ...sent, shapes: [] }));
}

async function opened(page = text) {
  const changed = vi.fn();
  const draw = vi.fn(async (asked: string) => answer(asked));
  const kit = new DeskKit("harbour-moon", { ...found, text: page }, draw, changed);
  await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
  return { kit, draw, changed };
}

describe("DeskKit", () => {
  it("states the kit that the reader of its folder states", async () => {
    const { kit } = await opened();
    expect(kit.stated!.kit).toEqual(readKit(folder, FIXTURES, lent.shelf).kit);
    expect([kit.stated!.isExact, kit.messages]).toEqual([true, []]);
  });

  it("states another height and another depth at once, without the server", async () => {
    const { kit, draw, changed } = await opened();
    changed.mockClear();
    kit.change([{ at: ["fit", "height"], mm: 121 }], "height");
    kit.change([{ at: ["gauge", "lines", 1], mm: 17.5 }]);
    expect(kit.stated!.kit.fit.shape).toMatchObject({ height: 121 });
    expect(kit.stated!.kit.levels[0]!.depth).toBe(17.5);
    expect([draw.mock.calls.length, changed.mock.calls.length]).toEqual([1, 2]);
  });

  it("tells what is wrong, and keeps the last good kit in sight", async () => {
    const { kit } = await opened();
    const good = kit.stated;
    kit.change([{ at: ["levels", 0, "line"], value: 99 }]);
    expect(kit.messages).toMatchObject([{ field: "levels[1].line", line: 21 }]);
    expect(kit.messages[0]!.sentence).toContain("index.md:21");
    expect(kit.stated).toBe(good);
    kit.undo();
    expect([kit.messages, kit.stated!.kit]).toEqual([[], good!.kit]);
  });

  it("has another picture drawn, and shows the last one meanwhile", async () => {
    const { kit, draw } = await opened();
    kit.change([{ at: ["insert", "motifs", 0, "motif"], value: "gull" }]);
    expect([kit.isDrawing, kit.stated!.kit.motifs[0]!.name]).toEqual([true, "lantern"]);
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect([draw.mock.calls.length, kit.stated!.kit.motifs[0]!.name]).toEqual([2, "gull"]);
    kit.undo();
    expect([draw.mock.calls.length, kit.stated!.kit.motifs[0]!.name]).toEqual([2, "lantern"]);
  });

  it("draws what is asked last, however quickly it is asked", async () => {
    const { kit, draw } = await opened();
    for (const turn of [10, 20, 30, 40]) kit.change([{ at: ["insert", "motifs", 0, "turn"], value: turn }], "turn");
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect(draw.mock.calls.length).toBeLessThanOrEqual(3);
    const { text: last } = kit.draft;
    expect(last).toContain("turn: 40");
    expect(kit.stated!.text.data.insert!.motifs[0]!.turn).toBe(40);
  });

  it("tells why a picture cannot be drawn", async () => {
    const { kit } = await opened();
    kit.change([{ at: ["picture", "file"], value: "sun.svg" }]);
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect(kit.messages).toMatchObject([{ field: "picture.file" }]);
    expect(kit.stated!.text.data.picture.file).toBe("moon.svg");
  });

  it("draws again where its files changed", async () => {
    const { kit, draw } = await opened();
    kit.filesChanged();
    expect(kit.stated).toBeDefined();
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect(draw).toHaveBeenCalledTimes(2);
  });

  it("leaves the kit alone where its files drew the same again", async () => {
    const { kit, draw, changed } = await opened();
    const { stated, shapes } = kit;
    changed.mockClear();
    kit.filesChanged();
    expect([kit.isDrawing, kit.stated === stated]).toEqual([true, true]);
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect([kit.stated === stated, kit.shapes === shapes, draw.mock.calls.length]).toEqual([true, true, 2]);
    expect(changed).toHaveBeenCalledTimes(2);
    kit.change([{ at: ["fit", "height"], mm: 121 }]);
    expect([kit.stated!.isExact, draw.mock.calls.length]).toEqual([true, 2]);
  });

  it("states the kit anew where its files drew something else", async () => {
    const { kit, draw } = await opened();
    const { stated } = kit;
    draw.mockImplementationOnce(async (asked) => answer(asked.replace("motif: lantern", "motif: gull")));
    kit.filesChanged();
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect(kit.stated).not.toBe(stated);
    expect(kit.stated!.kit.motifs[0]!).not.toEqual(stated!.kit.motifs[0]!);
  });

  it("takes a change that is made while its files are drawn again", async () => {
    const { kit } = await opened();
    kit.filesChanged();
    kit.change([{ at: ["fit", "height"], mm: 119 }]);
    expect(kit.stated!.kit.fit.shape).toMatchObject({ height: 119 });
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect([kit.stated!.isExact, kit.messages]).toEqual([true, []]);
  });

  it("begins with a text that states no kit", async () => {
    const { kit } = await opened(text.replace("leaves: 204", "leaves: many"));
    expect([kit.stated, kit.messages.map(({ field }) => field)]).toEqual([undefined, ["book.leaves"]]);
    kit.change([{ at: ["book", "leaves"], value: 204 }]);
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect(kit.stated!.kit.book.leaves).toBe(204);
  });

  it("goes on where the server does not answer", async () => {
    const kit = new DeskKit(
      "harbour-moon",
      found,
      async () => await Promise.reject(new Error("away")),
      () => {},
    );
    await vi.waitFor(() => expect(kit.isDrawing).toBe(false));
    expect([kit.stated, kit.messages]).toEqual([undefined, []]);
  });
});

import { describe, expect, it } from "vitest";
import type { DeskText } from "../../../../src/input/desk/protocol.ts";
import { Draft } from "../../../../src/page/desk/draft/draft.ts";

const disk = (yaml: string, mark = "1"): DeskText => ({ file: "index.md", text: `---\n${yaml}\n---\nBelow.\n`, mark });
const yamlOf = (draft: Draft): string => draft.text.slice(4, -"\n---\nBelow.\n".length);
const drafted = (yaml: string): Draft => new Draft(disk(yaml));

describe("Draft.change(edits, name)", () => {
  it("makes each change a step", () => {
    const draft = drafted("a: 1\nb: 2");
    draft.change([{ at: ["a"], value: 3 }]);
    draft.change([{ at: ["b"], value: 4 }]);
    expect([yamlOf(draft), draft.changes]).toEqual(["a: 3\nb: 4", 2]);
    draft.undo();
    expect(yamlOf(draft)).toBe("a: 3\nb: 2");
    draft.undo();
    expect([yamlOf(draft), draft.isChanged, draft.canUndo, draft.canRedo]).toEqual(["a: 1\nb: 2", false, false, true]);
    draft.redo();
    draft.redo();
    expect([yamlOf(draft), draft.canRedo]).toEqual(["a: 3\nb: 4", false]);
  });

  it("makes a drag one step", () => {
    const draft = drafted("a: 1 # one");
    for (const mm of [2, 3, 4.5]) draft.change([{ at: ["a"], mm }], "a");
    expect([yamlOf(draft), draft.changes]).toEqual(["a: 4.5 # one", 1]);
    draft.undo();
    expect(yamlOf(draft)).toBe("a: 1 # one");
  });

  it("makes two drags two steps", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 2 }], "a");
    draft.rest();
    draft.change([{ at: ["a"], value: 3 }], "a");
    draft.undo();
    expect(yamlOf(draft)).toBe("a: 2");
  });

  it("makes no step of a drag that comes back", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 2 }], "a");
    draft.change([{ at: ["a"], value: 1 }], "a");
    expect([draft.isChanged, draft.canUndo, draft.changes]).toEqual([false, false, 0]);
    draft.change([{ at: ["a"], value: 3 }], "a");
    expect([yamlOf(draft), draft.changes]).toEqual(["a: 3", 1]);
  });

  it("forgets what was undone", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 2 }], "a");
    draft.undo();
    draft.change([{ at: ["a"], value: 3 }], "a");
    expect([yamlOf(draft), draft.canRedo]).toEqual(["a: 3", false]);
  });

  it("takes none where there is no front matter", () => {
    const draft = new Draft({ file: "index.md", text: "---\na: [\n---\n", mark: "1" });
    expect(draft.change([{ at: ["a"], value: 2 }])).toBe(false);
    draft.replace("---\na: 1\n---\n");
    expect([draft.change([{ at: ["a"], value: 2 }]), draft.text]).toEqual([true, "---\na: 2\n---\n"]);
  });
});

describe("Draft.written(text, mark)", () => {
  it("is no end of undoing", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 2 }], "a");
    const { text, mark } = draft.toWrite();
    expect(mark).toBe("1");
    draft.written(text, "2");
    expect([draft.isChanged, draft.changes, draft.toWrite().mark]).toEqual([false, 0, "2"]);
    draft.change([{ at: ["a"], value: 3 }], "a");
    expect(draft.changes).toBe(1);
    draft.undo();
    draft.undo();
    expect([yamlOf(draft), draft.isChanged, draft.changes]).toEqual(["a: 1", true, 1]);
  });

  it("keeps what was changed meanwhile", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 2 }]);
    const { text } = draft.toWrite();
    draft.change([{ at: ["a"], value: 3 }]);
    draft.written(text, "2");
    expect([yamlOf(draft), draft.isChanged, draft.disk.text]).toEqual(["a: 3", true, text]);
  });
});

describe("Draft.difference()", () => {
  it("shows the lines that change, and some around them", () => {
    const draft = drafted("a: 1\nb: 2\nc: 3\nd: 4\ne: 5\nf: 6");
    draft.change([{ at: ["b"], value: 7 }]);
    expect(draft.difference().map(({ kind, text }) => `${kind} ${text}`)).toEqual([
      "same ---",
      "same a: 1",
      "gone b: 2",
      "come b: 7",
      "same c: 3",
      "same d: 4",
    ]);
  });
});

describe("Draft.meet(found)", () => {
  it("takes their text where nothing was changed here", () => {
    const draft = drafted("a: 1");
    draft.meet(disk("a: 2", "2"));
    expect([yamlOf(draft), draft.meeting, draft.toWrite().mark]).toEqual(["a: 2", undefined, "2"]);
  });

  it("knows its own text again", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 2 }]);
    draft.meet(disk("a: 2", "2"));
    expect([draft.isChanged, draft.meeting, draft.canUndo]).toEqual([false, undefined, true]);
  });

  it("leaves both where one thing was changed twice", () => {
    const draft = drafted("a: 1\nb: 2");
    draft.change([{ at: ["a"], value: 3 }]);
    draft.meet(disk("a: 4\nb: 2", "2"));
    expect([yamlOf(draft), draft.meeting!.canMerge]).toEqual(["a: 3\nb: 2", false]);
    draft.decide("merge");
    expect(draft.meeting).toBeDefined();
    draft.decide("keep");
    expect([yamlOf(draft), draft.meeting, draft.isChanged, draft.toWrite().mark]).toEqual([
      "a: 3\nb: 2",
      undefined,
      true,
      "2",
    ]);
  });

  it("takes theirs, and gives her own back on undo", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 3 }]);
    draft.meet(disk("a: 4", "2"));
    draft.decide("take");
    expect([yamlOf(draft), draft.isChanged]).toEqual(["a: 4", false]);
    draft.undo();
    expect([yamlOf(draft), draft.isChanged]).toEqual(["a: 3", true]);
  });

  it("merges different fields, with their comments", () => {
    const draft = drafted("a: 1\nb: { x: 1, y: 2 }");
    draft.change([{ at: ["b", "x"], value: 3 }]);
    draft.meet(disk("# theirs\na: 4\nb: { x: 1, y: 5 } # five", "2"));
    expect(draft.meeting!.canMerge).toBe(true);
    draft.decide("merge");
    expect([yamlOf(draft), draft.isChanged, draft.changes]).toEqual([
      "# theirs\na: 4\nb: { x: 3, y: 5 } # five",
      true,
      2,
    ]);
  });

  it("merges by what both began with, however often the file changed", () => {
    const draft = drafted("a: 1\nb: 2\nc: 3");
    draft.change([{ at: ["a"], value: 9 }]);
    draft.meet(disk("a: 1\nb: 8\nc: 3", "2"));
    draft.meet(disk("a: 1\nb: 8\nc: 7", "3"));
    draft.decide("merge");
    expect(yamlOf(draft)).toBe("a: 9\nb: 8\nc: 7");
  });

  it("ends a meeting where they take their change back", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 3 }]);
    draft.meet(disk("a: 4", "2"));
    draft.meet(disk("a: 1", "3"));
    expect([draft.meeting, yamlOf(draft), draft.toWrite().mark]).toEqual([undefined, "a: 3", "3"]);
  });

  it("cannot merge with a text that cannot be read", () => {
    const draft = drafted("a: 1");
    draft.change([{ at: ["a"], value: 3 }]);
    draft.meet(disk("a: [1", "2"));
    expect(draft.meeting!.canMerge).toBe(false);
  });
});

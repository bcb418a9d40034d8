import { describe, expect, it } from "vitest";
import { completeAnswers } from "../../../src/build/beginning/complete.ts";
import { USUAL_BOOK } from "../../../src/core/beginning/answers.ts";

describe("completeAnswers(said) where nobody can be asked", () => {
  it("has usual answers for all but the picture", async () => {
    expect(await completeAnswers({ picture: { from: "word", text: "Ahoi, Möwe!" } }, false)).toEqual({
      slug: "ahoi-mowe",
      title: "Ahoi, Möwe!",
      picture: { from: "word", text: "Ahoi, Möwe!" },
      book: USUAL_BOOK,
      light: undefined,
      units: "mm",
      draft: false,
    });
  });

  it.each([
    [{ from: "icon", name: "sailboat" } as const, "Sailboat", "sailboat"],
    [{ from: "outline", name: "heart" } as const, "Heart", "heart"],
    [
      { from: "file", path: "/home/me/Evening boat_2.final.svg" } as const,
      "Evening boat 2.final",
      "evening-boat-2-final",
    ],
    [{ from: "word", text: "שלום" } as const, "שלום", "kit"],
  ])("calls a kit after its picture: %j", async (picture, title, slug) => {
    expect(await completeAnswers({ picture }, false)).toMatchObject({ title, slug });
  });

  it("takes the title from the folder's name, where only that is said", async () => {
    const said = { slug: "winter-boat", picture: { from: "icon", name: "sailboat" } } as const;
    expect(await completeAnswers(said, false)).toMatchObject({ title: "Winter boat", slug: "winter-boat" });
  });

  it("says what a folder may be called, and that a picture is needed", async () => {
    const picture = { from: "outline", name: "heart" } as const;
    await expect(completeAnswers({ picture, slug: "../heart" }, false)).rejects.toThrow(/small letters/);
    await expect(completeAnswers({}, false)).rejects.toThrow(/--word/);
  });
});

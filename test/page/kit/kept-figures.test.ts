import { describe, expect, it } from "vitest";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { readTexts } from "../../../src/page/kit/panel-texts.ts";
import { madeKit } from "../../core/kit/made-kit.ts";

// 7 1/4 in × 4 3/4 in: 184.15 mm and 120.65 mm, which a panel in millimetres shows as 184.2 and 120.7.
const MEASURED = { leafHeight: 184.15, leafWidth: 120.65 };

describe("readTexts(kit, textOf, before)", () => {
  const kit = madeKit({ book: { leafHeight: 200, leafWidth: 130 } });
  const read = (texts: Readonly<Record<string, string>>) =>
    readTexts(kit, (name) => texts[name], refitKit(kit, MEASURED)).refit;

  it("keeps a figure that is finer than its text, as long as the text is the one that was shown", () => {
    expect(read({ leafHeight: "184.2 mm", leafWidth: "120.7 mm", blockThickness: "9" })).toEqual({
      ...MEASURED,
      blockThickness: 9,
    });
  });

  it("takes a text that was written anew as it says", () => {
    expect(read({ leafHeight: "184.2", leafWidth: "120.7 mm" })).toEqual({ leafHeight: 184.2, leafWidth: 120.65 });
  });
});

import { describe, expect, it } from "vitest";
import { photoViews } from "../../../src/output/views/photo-files.ts";

describe("photoViews(photos, folder)", () => {
  it("gives photos of one name, in other folders or scripts, files of their own", () => {
    const files = ["day/moon.jpg", "night/moon.png", "MOON.jpg", "луна.jpg", "月.jpg"];
    const views = photoViews(
      files.map((file) => ({ file, alt: file })),
      "photos",
    );
    expect(views.map(({ fallback }) => fallback)).toEqual([
      "photos/moon-960.jpg",
      "photos/moon-2-960.jpg",
      "photos/moon-3-960.jpg",
      "photos/photo-960.jpg",
      "photos/photo-2-960.jpg",
    ]);
    expect(views[1]!.webp).toBe(
      "photos/moon-2-480.webp 480w, photos/moon-2-960.webp 960w, photos/moon-2-1600.webp 1600w",
    );
    expect(views[1]!.large).toBe("photos/moon-2-1600.webp");
  });
});

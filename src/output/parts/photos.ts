import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { type PhotoView, photoViews } from "../views/photo-files.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** How wide a photo stands in the page, for the browser's choice of file. */
const SIZES = "(max-width: 40rem) 100vw, 45rem";

/** The kit's photos, each of which opens as large as there is; nothing where it has none. */
export function photosPart(kit: Kit): Markup {
  if (kit.photos.length === 0) return false;
  const items = photoViews(kit.photos, "photos").map(
    (photo) => html`<li><a href="${photo.large}">${pictureOf(photo)}</a></li>`,
  );
  return html`<section aria-label="${say.kitPhotos()}"><ul class="photos">${items}</ul></section>`;
}

/** A photo as a picture of its page. */
export function pictureOf({ webp, jpeg, fallback, alt }: PhotoView): Html {
  return html`<picture><source type="image/webp" srcset="${webp}" sizes="${SIZES}"><img src="${fallback}" srcset="${jpeg}" sizes="${SIZES}" alt="${alt}" loading="lazy"></picture>`;
}

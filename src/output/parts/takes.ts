import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import { type Html, html } from "./markup.ts";

/** What a kit takes, in two lines: enough to choose by. */
export function takesPart({ supplies, cost }: Pick<KitViewBase, "supplies" | "cost">): Html {
  const named = (kind: "material" | "tool"): string =>
    rowText(supplies.filter((supply) => supply.kind === kind).map((one) => (kind === "tool" ? one.item : one.line)));
  return html`<p><b>${say.kitTakesMaterials()}</b> ${named("material")}</p>
<p><b>${say.kitTakesTools()}</b> ${named("tool")}</p>${
    cost !== "" &&
    html`
<p class="key">${say.supplyTotal({ total: cost })}</p>`
  }`;
}

/** The cautions that the kit's work calls for, a sentence or two each. */
export function carePart({ cautions }: Pick<KitViewBase, "cautions">): Html {
  const items = cautions.map(({ title, short }) => html`<li><b>${title}.</b> ${short}</li>`);
  return html`<ul class="care-list">${items}</ul>`;
}

import type { Story } from "../../core/story/story.ts";
import { targetOf } from "../../core/story/targets.ts";
import type { KitMessage } from "../../input/files/message.ts";
import * as say from "../../words/messages.ts";

/**
 * A message about each link of a story, by its page, that leads to none of a site's addresses. Of a part of a site it is not
 * known which kits and classes the whole one has.
 */
export function deadLinks(
  stories: ReadonlyMap<string, Story>,
  addresses: ReadonlySet<string>,
  isPart: boolean,
): KitMessage[] {
  const isThere = (address: string): boolean =>
    addresses.has(address) || (isPart && /^\/(kits|classes)\//.test(address));
  return [...stories].flatMap(([page, { file, links }]) =>
    links.flatMap(({ target, line }) => {
      const leads = targetOf(target, page);
      if (leads.kind === "away" || (leads.kind === "site" && isThere(leads.address))) return [];
      const about = { file, line, column: undefined, field: say.storyLink() };
      const given = say.storyNowhere({ address: target });
      return [{ ...about, given, allowed: say.storyPages(), remedy: say.storyCorrectLink() }];
    }),
  );
}

import type { Story } from "../../core/story/story.ts";
import { targetOf } from "../../core/story/targets.ts";
import type { KitMessage } from "../../input/files/message.ts";
import * as say from "../../words/messages.ts";

/** A message about each link of a story, by its page, that leads to none of a site's addresses. */
export function deadLinks(stories: ReadonlyMap<string, Story>, addresses: ReadonlySet<string>): KitMessage[] {
  return [...stories].flatMap(([page, { file, links }]) =>
    links.flatMap(({ target, line }) => {
      const leads = targetOf(target, page);
      if (leads.kind === "away" || (leads.kind === "site" && addresses.has(leads.address))) return [];
      const about = { file, line, column: undefined, field: say.storyLink() };
      const given = say.storyNowhere({ address: target });
      return [{ ...about, given, allowed: say.storyPages(), remedy: say.storyCorrectLink() }];
    }),
  );
}

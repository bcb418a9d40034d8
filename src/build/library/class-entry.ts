import type { Story } from "../../core/story/story.ts";
import type { Strays } from "../../input/files/strays.ts";
import type { ClassCard } from "../../output/views/class/class-card.ts";
import type { ClassReport } from "./class-report.ts";

/** What the site knows of a class beside the class's own pages. */
export interface ClassEntry {
  readonly slug: string;
  /** Names all that the class is read and computed from. */
  readonly key: string;
  readonly card: ClassCard;
  readonly report: ClassReport;
  readonly story: Story;
  readonly strays: readonly Strays[];
}

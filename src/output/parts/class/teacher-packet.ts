import type { ClassView } from "../../views/class/class-view.ts";
import { type Html, html } from "../markup.ts";
import { blankMeasures } from "./blank-measures.ts";
import { handouts } from "./handouts.ts";
import { preparationSection } from "./preparation.ts";
import { rosterSection } from "./roster.ts";
import { seatCards } from "./seat-cards.ts";
import { shoppingSection } from "./shopping.ts";
import { supervisionSection } from "./supervision.ts";
import { teacherSchedule } from "./teacher-schedule.ts";

/** The teacher's packet: what she needs before and during the class, and what she hands out. */
export function teacherPacket(view: ClassView): Html {
  return html`${rosterSection(view)}

${shoppingSection(view)}

${preparationSection(view)}

${blankMeasures(view)}

${teacherSchedule(view)}

${supervisionSection(view)}

${handouts(view)}

${seatCards(view)}`;
}

import { join } from "node:path";
import { privateFolder } from "../../output/private-folder.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import { packetFooter } from "../../output/views/packet-footer.ts";
import { PAPERS } from "../../output/views/paper.ts";
import * as say from "../../words/messages.ts";
import { paperLabel } from "../../words/papers.ts";
import type { PrintJob } from "./print-job.ts";

/** A class's PDFs on its paper: the teacher's packet and the measuring card, then a packet for each seat that fits; none where it is closed. */
export function classJobs(output: string, view: ClassView): PrintJob[] {
  const { plan } = view;
  if (plan.state === "closed") return [];
  const folder = join(output, "classes", view.slug);
  const of = { kind: "class", slug: view.slug } as const;
  const paper = PAPERS.find((one) => one.name === plan.paper)!;
  const seats = view.seats.flatMap(({ number, view: kitView }): PrintJob[] => {
    if (!kitView) return [];
    const own = join(folder, `seat-${number}`);
    const title = say.packetSeatTitle({ seat: number, title: kitView.kit.title });
    return [
      {
        page: join(own, "packet/index.html"),
        of: { ...of, seat: number, name: `classes/${view.slug}/seat-${number}/packet` },
        pictures: [join(own, "cover.jpg")],
        paper,
        target: join(own, `packet-${paper.name}.pdf`),
        title,
        footer: packetFooter(kitView.kit, title, paper),
        ...(plan.packet === "bench" ? { edition: "bench" } : {}),
      },
    ];
  });
  const whole = (["teacher", "measuring-card"] as const).map((name) => classSheetJob(output, view, name));
  return [...whole, ...seats];
}

/** What is printed for a whole class, its title, and where it stands below the site. */
const CLASS_SHEETS = {
  teacher: { title: say.printTeacher, at: privateFolder },
  "measuring-card": { title: say.printMeasuringCard, at: (slug: string) => `classes/${slug}` },
  "print-plan": { title: say.printPlanOfClass, at: privateFolder },
} as const;

/** Prints one of a class's own sheets on its paper. */
export function classSheetJob(output: string, view: ClassView, name: keyof typeof CLASS_SHEETS): PrintJob {
  const { slug, plan, date } = view;
  const at = CLASS_SHEETS[name].at(slug);
  const paper = PAPERS.find((one) => one.name === plan.paper)!;
  const title = CLASS_SHEETS[name].title({ title: plan.title });
  return {
    page: join(output, at, name, "index.html"),
    of: { kind: "class", slug, name: `${at}/${name}` },
    pictures: [],
    paper,
    target: join(output, at, `${name}.pdf`),
    title,
    footer: say.printClassFooter({ title, date, paper: paperLabel(paper.name) }),
  };
}

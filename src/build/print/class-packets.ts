import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PDFDocument } from "@cantoo/pdf-lib";
import { privateFolder } from "../../output/private-folder.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import { packetFooter } from "../../output/views/packet-footer.ts";
import { PAPERS } from "../../output/views/paper.ts";
import * as say from "../../words/messages.ts";
import { paperLabel } from "../../words/papers.ts";
import { finishPdf } from "./finish-pdf.ts";
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
        ...(plan.packet === "bench" ? { without: "strips" } : {}),
      },
    ];
  });
  const whole = [
    { name: "teacher", title: say.printTeacher({ title: plan.title }), at: privateFolder(view.slug) },
    { name: "measuring-card", title: say.printMeasuringCard({ title: plan.title }), at: `classes/${view.slug}` },
  ].map(({ name, title, at }) => ({
    page: join(output, at, name, "index.html"),
    of: { ...of, name: `${at}/${name}` },
    pictures: [],
    paper,
    target: join(output, at, `${name}.pdf`),
    title,
    footer: say.printClassFooter({ title, date: view.date, paper: paperLabel(paper.name) }),
  }));
  return [...whole, ...seats];
}

/** All seats' packets as one file in seat order, where any seat has one; each begins on a front side, for printing on both sides. */
export async function mergeSeats(output: string, view: ClassView): Promise<void> {
  const folder = join(output, "classes", view.slug);
  const { paper, title } = view.plan;
  const fitting = view.seats.filter((seat) => seat.view);
  if (fitting.length === 0) return;
  const merged = await PDFDocument.create();
  for (const seat of fitting) {
    const packet = await PDFDocument.load(readFileSync(join(folder, `seat-${seat.number}`, `packet-${paper}.pdf`)));
    const pages = await merged.copyPages(packet, packet.getPageIndices());
    for (const page of pages) merged.addPage(page);
    const { width, height } = pages[0]!.getSize();
    if (pages.length % 2 === 1) merged.addPage([width, height]);
  }
  const raw = await merged.save({ addDefaultPage: false });
  writeFileSync(
    join(output, privateFolder(view.slug), `all-seats-${paper}.pdf`),
    await finishPdf(raw, say.printAllSeats({ title })),
  );
}

import { join } from "node:path";
import type { KitFacts } from "../../output/views/kit-card.ts";
import { packetFooter } from "../../output/views/packet-footer.ts";
import { PAPERS, type Paper } from "../../output/views/paper.ts";
import * as say from "../../words/messages.ts";
import type { FootedPaper, PrintJob } from "./print-job.ts";

/** Every kit's packet, whole and without its strips, and its table alone, in large print and in short, on A4 and US Letter. */
export function kitJobs(output: string, kit: KitFacts): PrintJob[] {
  const { slug } = kit;
  const folder = join(output, "kits", slug);
  const footed = (title: string, paper: Paper): FootedPaper => ({ paper, footer: packetFooter(kit, title, paper) });
  return PAPERS.flatMap((paper) =>
    [
      {
        page: "packet/index.html",
        name: "packet",
        target: `packet-${paper.name}.pdf`,
        title: say.packetTitle({ title: kit.title }),
      },
      {
        page: "packet/index.html",
        name: "packet",
        target: `packet-bench-${paper.name}.pdf`,
        title: say.packetBenchTitle({ title: kit.title }),
        edition: "bench" as const,
      },
      {
        page: "packet/large.html",
        name: "packet/large",
        target: `table-large-${paper.name}.pdf`,
        title: say.packetLargeTitle({ title: kit.title }),
      },
      {
        page: "packet/large.html",
        name: "packet/large",
        target: `table-compact-${paper.name}.pdf`,
        title: say.packetCompactTitle({ title: kit.title }),
        edition: "short" as const,
      },
    ].map(({ page, name, target, title, ...edition }) => ({
      page: join(folder, page),
      of: { kind: "kit" as const, slug, name: `kits/${slug}/${name}` },
      pictures: [join(folder, "cover.jpg")],
      ...footed(title, paper),
      both: [footed(title, PAPERS[0]), footed(title, PAPERS[1])] as const,
      target: join(folder, target),
      title,
      ...edition,
    })),
  );
}

import { it } from "vitest";
import { makeProject } from "./project.ts";
it("t", () => { const p = makeProject({ demoKits: ["little-gull", "harbour-moon"] }); const t = Date.now(); const r = p.build(); console.log(Date.now() - t, r.code, r.stdout, r.stderr.slice(0, 3000)); try { console.log(p.list("dist").join("\n")); } catch {} p.remove(); }, 300000);

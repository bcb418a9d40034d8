import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { KitCrew } from "../../../src/build/kits/kit-crew.ts";
import { speakFirst } from "../../../src/build/library/first-words.ts";
import { openLibrary } from "../../../src/build/library/library.ts";
import { Placing } from "../../../src/build/store/placing.ts";
import { Store } from "../../../src/build/store/store.ts";

/** Makes all kits of the project in the current folder by so many threads, below a folder, with a store of its own. */
const [threads, folder] = process.argv.slice(2);
const base = process.cwd();
speakFirst(base);
const [output, aside] = ["site", "aside"].map((name) => join(folder!, name));
for (const one of [output!, aside!]) mkdirSync(one, { recursive: true });
const store = new Store(join(folder!, "store"));
const crew = new KitCrew(store, Number(threads));
// The catalogue's own text leads to kits that are not here.
const opening = { whenBroken: "leave out" } as const;
const library = await openLibrary(base, opening, { store, readKits: (facts) => crew.reader(facts) });
const surroundings = { hasGuide: true, hasFeed: false, isServed: false };
await crew.make(library.kits, library, { placing: new Placing(output!), aside: aside!, surroundings });
await crew.close();
console.log(library.kits.map(({ slug }) => slug).join(" "));

import { referenceOf } from "./src/input/guide/references.ts";
import { REFERENCES } from "./src/core/guide/reference.ts";
import { readWords } from "./src/input/words/read-words.ts";
import { speak } from "./src/words/speak.ts";
speak(readWords(process.cwd(), "en"), "en");
for (const name of REFERENCES) { console.log("=====",name); for (const g of referenceOf(name)) { console.log("--", g.path, "|", g.about); for (const k of g.keys) console.log("  ", k.path, "|", k.about, "|", JSON.stringify(k.allowed), "|", JSON.stringify(k.usual), k.group ?? ""); } }

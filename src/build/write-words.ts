import { writeFileSync } from "node:fs";
import { readLanguage } from "../input/words/read-words.ts";
import { messagesModule } from "./bundle/messages-module.ts";

/** `npm run words`: writes the typed functions of all messages of content/words/en to src/words/messages.ts. */
writeFileSync("src/words/messages.ts", messagesModule(readLanguage(process.cwd(), "en")));

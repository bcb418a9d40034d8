import { join } from "node:path";
import launchEditor from "launch-editor";
import type { OpenAsk } from "../../input/desk/protocol.ts";
import { toldOfFile } from "../../input/files/file-message.ts";
import { realPath } from "../../input/files/real-path.ts";
import * as say from "../../words/messages.ts";
import { deskFile } from "./desk-file.ts";
import { NotWritten } from "./texts.ts";

/** An editor that does not start says so this soon, ms. */
const SOON = 400;

/**
 * Opens a file of the desk in its author's editor, at a line: the one that VISUAL or EDITOR names, or one that is running.
 * @returns why that failed, in a sentence @throws NotWritten for a file that is none of the desk's, KitError
 */
export function openInEditor(base: string, { file, line, column }: OpenAsk): Promise<string | undefined> {
  const source = deskFile(base, file);
  if (!source) throw new NotWritten("not of the desk");
  toldOfFile(() => realPath(source));
  const place = [join(base, file), line, line && column].filter((part) => part !== undefined).join(":");
  return new Promise((resolve) => {
    const timer = setTimeout(() => resolve(undefined), SOON);
    launchEditor(place, (_, why) => {
      clearTimeout(timer);
      resolve(why === null ? say.deskNoEditor() : say.deskEditorFailed({ why }));
    });
  });
}

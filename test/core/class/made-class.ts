import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { stringify } from "yaml";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { offeredOf } from "../../../src/input/class/kit-named.ts";
import { readClass, type StatedClass } from "../../../src/input/class/read-classes.ts";
import { KitError, type KitMessage } from "../../../src/input/files/message.ts";
import { FIXTURES, fixtureKit } from "../../input/kit/kit-folders.ts";

/** The fixtures’ class, and the kits that it offers. */
export const FIXTURE_CLASS = join(FIXTURES, "content/classes/winter-evenings");

export const KITS: readonly Kit[] = ["little-gull", "harbour-moon", "evening-boat"].map(fixtureKit);

export function readFixtureClass(): KitClass {
  return readClass(FIXTURE_CLASS, FIXTURES, { ...offeredOf(KITS), broken: [], drafts: [] }).plan;
}

/** A small class: one seat at the gull in the gull's own book. Tests change it. */
export function smallClass(): Record<string, unknown> {
  return {
    title: "An evening",
    date: "2027-02-04",
    place: "Reading room",
    kits: ["little-gull"],
    sessions: [{ minutes: 120 }],
    seats: [{ seat: 1, book: { leafHeight: 178, leafWidth: 108, blockThickness: 12.5, leaves: 112, pageOneLeaf: 3 } }],
  };
}

/** Reads a class made of front matter, and of a books table where one is given. */
export function readMadeClass(matter: object | string, table?: string | Buffer, name = "books.csv"): KitClass {
  const base = mkdtempSync(join(tmpdir(), "leaflight-class-"));
  try {
    const folder = join(base, "content/classes/made");
    mkdirSync(folder, { recursive: true });
    const yaml = typeof matter === "string" ? matter : stringify(matter);
    writeFileSync(join(folder, "index.md"), `---\n${yaml}---\nWords.\n`);
    if (table !== undefined) writeFileSync(join(folder, name), table);
    return readClass(folder, base, { ...offeredOf(KITS), broken: [], drafts: [] }).plan;
  } finally {
    rmSync(base, { recursive: true, force: true });
  }
}

/** Reads the class `made` among others, each made of its file and by the name of its folder. */
export function readAmong(classes: Readonly<Record<string, string>>): StatedClass {
  const base = mkdtempSync(join(tmpdir(), "leaflight-class-"));
  try {
    for (const [slug, text] of Object.entries(classes)) {
      mkdirSync(join(base, "content/classes", slug), { recursive: true });
      writeFileSync(join(base, "content/classes", slug, "index.md"), text);
    }
    return readClass(join(base, "content/classes/made"), base, { ...offeredOf(KITS), broken: [], drafts: [] });
  } finally {
    rmSync(base, { recursive: true, force: true });
  }
}

/** What reading it ends with. */
export function messagesOfClass(matter: object | string, table?: string): readonly KitMessage[] {
  try {
    readMadeClass(matter, table);
    return [];
  } catch (error) {
    if (error instanceof KitError) return error.messages;
    throw error;
  }
}

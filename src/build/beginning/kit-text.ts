import { stringify } from "yaml";
import * as say from "../../words/messages.ts";
import type { NewKit } from "./new-kit.ts";

/** The text of a new kit's index.md: each key in a line or two, with a word on those that an author changes first. */
export function kitText(kit: NewKit): string {
  const comments: Readonly<Record<string, string>> = {
    levels: say.newTextLevels(),
    book: say.newTextBook(),
    fit: say.newTextFit(),
  };
  const lines = Object.entries(kit).flatMap(([key, value]) => {
    const comment = comments[key] === undefined ? "" : ` # ${comments[key]}`;
    if (Array.isArray(value)) return [`${key}:${comment}`, ...value.map((one) => `  - ${flow(one)}`)];
    if (typeof value !== "object" || value === null) return [`${key}: ${flow(value)}`];
    const inside = Object.entries(value).map(([name, one]) => `  ${name}: ${flow(one)}`);
    return [`${key}:${comment}`, ...inside];
  });
  return ["---", SCHEMA, ...lines, "---", say.newTextBody(), ""].join("\n");
}

/** Editors that know YAML schemas complete the keys by it. */
const SCHEMA = "# yaml-language-server: $schema=../kit.schema.json";

function flow(value: unknown): string {
  return stringify(value, { collectionStyle: "flow", lineWidth: 0 }).trim();
}

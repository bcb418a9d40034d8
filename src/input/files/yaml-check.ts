import { type Alias, type Document, isAlias, isMap, isNode, isScalar, isSeq, type Node, type YAMLMap } from "yaml";
import * as say from "../../words/messages.ts";
import { hex } from "./hex.ts";
import { strayCharacter } from "./stray-character.ts";
import { YamlFault } from "./yaml-fault.ts";

/** Aliases are for a few repeated figures: not for more of them, nor for what unfolds to more entries. */
const MOST_ALIASES = 500;
const MOST_UNFOLDED = 10_000;

/** Tags that YAML's core schema gives a meaning. Source: YAML 1.2.2, "Core Schema". */
const TAG = "tag:yaml.org,2002:";
const CORE: readonly string[] = ["str", "int", "float", "bool", "null", "seq", "map"].map((name) => TAG + name);

/**
 * Refuses what a YAML document may hold and front matters have no use for: tags of its own, aliases that lead nowhere, into
 * themselves or unfold to a flood, a key twice in a map, and control characters in texts. @throws YamlFault at the first
 */
export function checkYaml(document: Document): void {
  new Check().visit(document.contents);
}

class Check {
  /** The last node of each anchor, as far as the text has been gone through. */
  readonly #anchors = new Map<string, Node>();
  /** Entries under each node, aliases unfolded; none for a node that is being gone through. */
  readonly #sizes = new Map<Node, number>();
  #aliases = 0;
  #unfolded = 0;

  /** Entries under a node and itself. Depth is bounded by the parser. */
  visit(node: unknown): number {
    if (!isNode(node)) return 0;
    if (isAlias(node)) return this.#follow(node);
    refuseTag(node);
    const { anchor } = node as { anchor?: string };
    if (anchor !== undefined) this.#anchors.set(anchor, node);
    const size = 1 + this.#inside(node);
    this.#sizes.set(node, size);
    return size;
  }

  #inside(node: Node): number {
    if (isScalar(node)) refuseStray(node.value, offsetOf(node));
    if (isSeq(node)) return node.items.reduce<number>((sum, item) => sum + this.visit(item), 0);
    if (!isMap(node)) return 0;
    refuseKeys(node);
    return node.items.reduce((sum, { key, value }) => sum + this.visit(key) + this.visit(value), 0);
  }

  #follow(alias: Alias): number {
    const given = { alias: `*${alias.source}` };
    const target = this.#anchors.get(alias.source);
    if (target === undefined) throw new YamlFault(offsetOf(alias), say.checkYamlAlias(given));
    const size = this.#sizes.get(target);
    if (size === undefined) throw new YamlFault(offsetOf(alias), say.checkYamlCircle(given));
    this.#aliases += 1;
    this.#unfolded += size;
    if (this.#aliases > MOST_ALIASES || this.#unfolded > MOST_UNFOLDED)
      throw new YamlFault(offsetOf(alias), say.checkYamlFlood({ aliases: MOST_ALIASES, entries: MOST_UNFOLDED }));
    return size;
  }
}

function refuseTag(node: Node): void {
  const { tag } = node as { tag?: string };
  if (tag === undefined || CORE.includes(tag)) return;
  const written = tag.startsWith(TAG) ? `!!${tag.slice(TAG.length)}` : tag;
  throw new YamlFault(offsetOf(node), say.checkYamlTag({ tag: written }));
}

function refuseKeys(map: YAMLMap): void {
  const seen = new Set<string>();
  for (const { key } of map.items) {
    const name = isScalar(key) ? String(key.value) : undefined;
    if (name === undefined) continue;
    // No file has it, and schemas of free keys would drop it without a word.
    if (name === "__proto__") throw new YamlFault(offsetOf(key as Node), say.checkUnknownKey({ key: name }));
    if (seen.has(name)) throw new YamlFault(offsetOf(key as Node), say.checkYamlKeyTwice({ key: name }));
    seen.add(name);
  }
}

function refuseStray(value: unknown, offset: number): void {
  const stray = typeof value === "string" ? strayCharacter(value) : undefined;
  if (stray) throw new YamlFault(offset, say.fileControl({ code: hex("U+", stray.code, 4) }));
}

function offsetOf(node: Node): number {
  return node.range?.[0] ?? 0;
}

import { LeafSpans } from "../../../src/core/spans/leaf-spans.ts";
import type { Span } from "../../../src/core/spans/span.ts";

/** A leaf of these spans, from the head and gapless. */
export function exactLeaf(spans: readonly Span[]): LeafSpans {
  const leaf = new LeafSpans();
  for (const { to, level } of spans) leaf.add(to, level);
  return leaf;
}

/** The spans of a leaf. */
export function spansOf(leaf: LeafSpans): Span[] {
  return Array.from({ length: leaf.count }, (_, i) => ({
    from: leaf.startOf(i),
    to: leaf.ends[i]!,
    level: leaf.levels[i]!,
  }));
}

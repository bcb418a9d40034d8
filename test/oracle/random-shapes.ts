/** A source of numbers from 0 to 1; mulberry32, so that a seed gives the same kits everywhere. */
export type Random = () => number;

export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export function between(random: Random, low: number, high: number, decimals = 2): number {
  return Number((low + (high - low) * random()).toFixed(decimals));
}

/** Where a shape goes: about its centre, reaching about `r` from it. `id` names it in the SVG. */
export interface Place {
  id: string;
  cx: number;
  cy: number;
  r: number;
}

type Shape = (random: Random, place: Place) => string;

/** Every shape is one element with the place's id, some with definitions before it. */
export const SHAPES: Record<string, Shape> = {
  /** Two arcs each way and an off-centre hole under evenodd, set in a style attribute. */
  ring(random, { id, cx, cy, r }) {
    const hole = between(random, 0.35 * r, 0.6 * r);
    const x = between(random, cx - 0.2 * r, cx + 0.2 * r);
    const disc = (x0: number, a: number) =>
      `M${f(x0 - a)} ${f(cy)}a${a} ${a} 0 1 1 ${f(2 * a)} 0a${a} ${a} 0 11${f(-2 * a)} 0z`;
    return `<path id="${id}" style="fill-rule: evenodd; fill: #86a" d="${disc(cx, f(r))}${disc(x, hole)}"/>`;
  },

  /** One petal of cubic curves, used six times under nested transforms. */
  flower(random, { id, cx, cy, r }) {
    const turn = between(random, 5, 55);
    const petal = `<path id="${id}-petal" d="M0 0C${f(r / 2)}-${f(r / 4)} ${f(r / 3)}-${f(r * 0.8)} 0-${f(r)}c${f(-r / 3)} ${f(r * 0.2)}-${f(r / 2)} ${f(r * 0.75)} 0 ${f(r)}z"/>`;
    const uses = [0, 60, 120, 180, 240, 300].map((a) => `<use href="#${id}-petal" transform="rotate(${a})"/>`);
    const scaled = `<g transform="scale(0.98 1.02)">${uses.join("")}</g>`;
    return `<defs>${petal}</defs><g id="${id}" fill="#c33"><g transform="translate(${cx} ${cy}) rotate(${turn})">${scaled}</g></g>`;
  },

  /** A star of five points that crosses itself; its middle is a hole under evenodd only. */
  star(random, { id, cx, cy, r }) {
    const turn = between(random, 0, 1.2);
    const rule = random() < 0.5 ? "evenodd" : "nonzero";
    const corners = [0, 2, 4, 1, 3].map((i) => {
      const angle = turn + (i * 2 * Math.PI) / 5;
      return `${f(cx + r * Math.sin(angle))},${f(cy - r * Math.cos(angle))}`;
    });
    return `<polygon id="${id}" fill="gold" fill-rule="${rule}" points="${corners.join(" ")}"/>`;
  },

  /** A band with waving edges of quadratic curves and their smooth continuations. */
  wave(random, { id, cx, cy, r }) {
    const q = f(r / 2);
    const rise = between(random, 0.3 * r, 0.6 * r);
    const band = between(random, 0.35 * r, 0.5 * r);
    const d = `M${f(cx - r)} ${f(cy)}q${f(q / 2)} ${-rise} ${q} 0t${q} 0 ${q} 0T${f(cx + r)} ${f(cy + 0.1 * r)}v${band}q${f(-q / 2)} ${rise} ${-q} 0t${-q} 0${-q} 0${-q} 0z`;
    return `<g fill="teal"><path id="${id}" d="${d}"/></g>`;
  },

  /** A turned ellipse and a skewed rounded rectangle under one matrix. */
  bubble(random, { id, cx, cy, r }) {
    const tilt = between(random, 15, 70);
    const side = f(0.9 * r);
    const ellipse = `<ellipse cx="${f(-0.2 * r)}" rx="${f(0.7 * r)}" ry="${f(0.4 * r)}" transform="rotate(${tilt})"/>`;
    const rect = `<rect x="${f(-0.1 * r)}" y="${f(-0.3 * r)}" width="${side}" height="${f(side * 0.7)}" rx="${f(side / 5)}" transform="skewX(12)"/>`;
    return `<g id="${id}" transform="matrix(0.95 0.1 -0.15 0.95 ${cx} ${cy})"><g>${ellipse}${rect}</g></g>`;
  },

  /** A crescent: a long arc out and a flatter, tilted elliptic arc back, with packed flags. */
  crescent(random, { id, cx, cy, r }) {
    const inner = between(random, 1.02 * r, 1.3 * r);
    const y = f(0.75 * r);
    const x = f(0.66 * r);
    const d = `M${f(cx + x)} ${f(cy - y)}A${f(r)} ${f(r)} 0 10${f(cx + x)} ${f(cy + y)} ${f(inner)} ${f(r)} 20 0 1${f(cx + x)} ${f(cy - y)}Z`;
    return `<path id="${id}" fill="#ddd" d="${d}"/>`;
  },

  /** A closed outline of smooth cubics with a hole that turns the other way (nonzero). */
  pebble(random, { id, cx, cy, r }) {
    const w = f(r * between(random, 0.8, 0.98));
    const h = f(0.75 * r);
    const k = f(0.55 * h);
    const out = `M${f(cx - w)} ${cy}C${f(cx - w)} ${f(cy - k)} ${f(cx - 0.6 * w)} ${f(cy - h)} ${cx} ${f(cy - h)}S${f(cx + w)} ${f(cy - k)} ${f(cx + w)} ${cy}s${f(-0.3 * w)} ${h}${-w} ${h}S${f(cx - w)} ${f(cy + k)} ${f(cx - w)} ${cy}z`;
    const a = f(0.3 * h);
    const hole = `M${f(cx - a)} ${cy}a${a} ${a} 0 0 0 ${f(2 * a)} 0 ${a} ${a} 0 0 0 ${f(-2 * a)} 0z`;
    return `<path id="${id}" fill="none" stroke="none" style="fill:navy" d="${out} ${hole}"/>`;
  },

  /** A gear of straight sides from relative moves, drawn at the origin and placed by a nested group. */
  gear(random, { id, cx, cy, r }) {
    const teeth = 7 + Math.floor(random() * 4);
    const corners = Array.from({ length: 4 * teeth }, (_, i) => {
      const angle = ((i + 0.3) * Math.PI) / (2 * teeth);
      const radius = i % 4 < 2 ? r : 0.78 * r;
      return [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
    });
    const d = corners.map(([x, y], i) => `${i === 0 ? "M" : "L"}${f(x)},${f(y)}`).join("");
    return `<g transform="translate(${cx}, ${cy})"><g id="${id}"><path d="${d}z" transform="rotate(4) scale(.99)"/></g></g>`;
  },
};

function f(value: number): number {
  return Number(value.toFixed(3));
}

import type { BufferGeometry, Vector3 } from "three";
import type { Place } from "./scene";

type Flat = [number, number];

/** What a cut through solids shows: faces to fill, thin ones to fill with ink, their outlines, and hatching. */
export interface CutFaces { faces: number[]; thin: number[]; outlines: number[]; hatch: number[] }

export const nothingCut = (): CutFaces => ({ faces: [], thin: [], outlines: [], hatch: [] });

/** Sheets thinner than this are drawn solid, as drawings do where there is no room for hatching [mm]. */
const thinMm = 9;

/** Adds the face where the plane `axis = at` cuts a convex solid that is shifted by `shift`. */
export function cutSolid(into: CutFaces, shape: BufferGeometry, shift: Vector3, axis: number, at: number, hatchDeg: number, hatchMm: number): void {
  const u = (axis + 1) % 3;
  const v = (axis + 2) % 3;
  const outline = hull(crossings(shape, [shift.x, shift.y, shift.z], axis, at, u, v));
  if (outline.length < 3) return;
  const place = ([a, b]: Flat): Place => {
    const p: Place = [0, 0, 0];
    p[axis] = at; p[u] = a; p[v] = b;
    return p;
  };
  const fill = thickness(outline) < thinMm ? into.thin : into.faces;
  for (let i = 1; i < outline.length - 1; i++) fill.push(...place(outline[0]!), ...place(outline[i]!), ...place(outline[i + 1]!));
  outline.forEach((p, i) => into.outlines.push(...place(p), ...place(outline[(i + 1) % outline.length]!)));
  if (fill === into.faces) for (const [a, b] of hatching(outline, hatchDeg, hatchMm)) into.hatch.push(...place(a), ...place(b));
}

function crossings(shape: BufferGeometry, shift: Place, axis: number, at: number, u: number, v: number): Flat[] {
  const position = shape.getAttribute("position");
  const found: Flat[] = [];
  const corner = (i: number): Place => [position.getX(i) + shift[0], position.getY(i) + shift[1], position.getZ(i) + shift[2]];
  for (let i = 0; i < position.count; i += 3) {
    const triangle = [corner(i), corner(i + 1), corner(i + 2)];
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangle[k]!, triangle[(k + 1) % 3]!];
      const [da, db] = [a[axis]! - at, b[axis]! - at];
      if (da * db >= 0) continue;
      const t = da / (da - db);
      found.push([a[u]! + (b[u]! - a[u]!) * t, a[v]! + (b[v]! - a[v]!) * t]);
    }
  }
  return found;
}

/** Convex hull by Andrew's monotone chain, so that the order of the crossings does not matter. */
function hull(points: Flat[]): Flat[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const turn = (o: Flat, a: Flat, b: Flat) => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
  const half = (from: Flat[]) => {
    const chain: Flat[] = [];
    for (const p of from) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, p) <= 1e-6) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

function thickness(outline: Flat[]): number {
  const span = (k: 0 | 1) => Math.max(...outline.map(p => p[k])) - Math.min(...outline.map(p => p[k]));
  return Math.min(span(0), span(1));
}

/** Parallel strokes across a convex outline. */
function hatching(outline: Flat[], degrees: number, spacing: number): [Flat, Flat][] {
  const [c, s] = [Math.cos(degrees * Math.PI / 180), Math.sin(degrees * Math.PI / 180)];
  const along = (p: Flat) => p[0] * c + p[1] * s;
  const across = (p: Flat) => p[1] * c - p[0] * s;
  const reach = outline.map(across);
  const strokes: [Flat, Flat][] = [];
  for (let line = Math.ceil(Math.min(...reach) / spacing) * spacing; line < Math.max(...reach); line += spacing) {
    const hits: number[] = [];
    outline.forEach((a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      const [da, db] = [across(a) - line, across(b) - line];
      if (da * db < 0) hits.push(along(a) + (along(b) - along(a)) * da / (da - db));
    });
    if (hits.length < 2) continue;
    const [low, high] = [Math.min(...hits), Math.max(...hits)];
    strokes.push([[low * c - line * s, low * s + line * c], [high * c - line * s, high * s + line * c]]);
  }
  return strokes;
}

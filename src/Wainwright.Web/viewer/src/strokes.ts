import { EdgesGeometry, Vector3, type BufferGeometry } from "three";
import { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { LineSegmentsGeometry } from "three/addons/lines/LineSegmentsGeometry.js";
import type { LineMaterial } from "three/addons/lines/LineMaterial.js";
import type { Place } from "./scene";

/** Separate strokes, six numbers each, in one pen. */
export function strokes(points: number[] | Float32Array, pen: LineMaterial): LineSegments2 {
  const lines = new LineSegments2(new LineSegmentsGeometry().setPositions(points), pen);
  lines.computeLineDistances();
  return lines;
}

/** A route drawn point to point. */
export function route(points: Place[], pen: LineMaterial): LineSegments2 {
  const pairs: number[] = [];
  for (let i = 1; i < points.length; i++) pairs.push(...points[i - 1]!, ...points[i]!);
  return strokes(pairs, pen);
}

/** The edges that a draughtsman would draw. */
export function edgesOf(shapes: BufferGeometry[]): Float32Array {
  const all: number[] = [];
  for (const shape of shapes) {
    const edges = new EdgesGeometry(shape, 30);
    all.push(...(edges.getAttribute("position").array as Float32Array));
    edges.dispose();
  }
  return new Float32Array(all);
}

/** An arrow from a place along a direction of length 1, with four barbs so that it reads as one from every side. */
export function arrow(at: Place, along: Place, length: number): number[] {
  const from = new Vector3(...at);
  const way = new Vector3(...along).normalize();
  const tip = from.clone().addScaledVector(way, length);
  const side = new Vector3(...(Math.abs(way.z) < 0.9 ? [0, 0, 1] as const : [1, 0, 0] as const)).cross(way).normalize();
  const up = way.clone().cross(side);
  const all = [...from.toArray(), ...tip.toArray()];
  for (const barb of [side, side.clone().negate(), up, up.clone().negate()]) all.push(...tip.toArray(), ...tip.clone().addScaledVector(way, -0.22 * length).addScaledVector(barb, 0.11 * length).toArray());
  return all;
}

/** A cross in all three axes, to mark a fixing. */
export function cross([x, y, z]: Place, r: number): number[] {
  return [x - r, y, z, x + r, y, z, x, y - r, z, x, y + r, z, x, y, z - r, x, y, z + r];
}

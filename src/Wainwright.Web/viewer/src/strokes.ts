import { EdgesGeometry, type BufferGeometry } from "three";
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

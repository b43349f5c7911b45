import type { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import type { Ink } from "./ink";
import type { Lettering } from "./lettering";
import type { Drawing } from "./scene";
import { strokes } from "./strokes";

/** The tape along both floor edges, with its figures on the side of the eye. */
export function tape({ van, ticks }: Drawing, ink: Ink, letters: Lettering): LineSegments2 {
  const marks: number[] = [];
  const [l, w] = van.size;
  for (const y of [-90, w + 90]) {
    marks.push(0, y, 0, l, y, 0);
    for (const { at } of ticks) marks.push(at, y, 0, at, y + (y < 0 ? -45 : 45), 0);
  }
  for (const { at, text } of ticks) letters.put(`tape ${text}`, [at, -190, 0], text, "tick");
  return strokes(marks, ink.faint);
}

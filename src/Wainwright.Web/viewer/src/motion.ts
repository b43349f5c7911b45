import { Vector3 } from "three";
import type { Place } from "./scene";

/** A shift along a path of shifts, 0 to 1, at even speed. */
export function along(path: Place[], t: number): Vector3 {
  const points = [new Vector3(), ...path.map(p => new Vector3(...p))];
  const lengths = points.slice(1).map((p, i) => p.distanceTo(points[i]!));
  let left = t * lengths.reduce((a, b) => a + b, 0);
  for (let i = 0; i < lengths.length; i++) {
    if (left <= lengths[i]!) return points[i]!.clone().lerp(points[i + 1]!, lengths[i] ? left / lengths[i]! : 0);
    left -= lengths[i]!;
  }
  return points.at(-1)!.clone();
}

const calm = matchMedia("(prefers-reduced-motion: reduce)");

/** Runs a drawing from 0 to 1; at once for people who asked for less motion. Resolves false when stopped before the end. */
export class Run {
  private frame = 0;
  private end: ((whole: boolean) => void) | null = null;

  start(seconds: number, draw: (t: number) => void): Promise<boolean> {
    this.stop();
    if (calm.matches || seconds <= 0) {
      draw(1);
      return Promise.resolve(true);
    }
    return new Promise(end => {
      this.end = end;
      const begun = performance.now();
      const tick = (now: number) => {
        const t = Math.min(1, Math.max(0, (now - begun) / 1000 / seconds));
        draw(t < 0.5 ? 2 * t * t : 1 - 2 * (1 - t) * (1 - t));
        if (t < 1) this.frame = requestAnimationFrame(tick);
        else this.finish(true);
      };
      this.frame = requestAnimationFrame(tick);
    });
  }

  stop(): void {
    cancelAnimationFrame(this.frame);
    this.finish(false);
  }

  private finish(whole: boolean): void {
    this.end?.(whole);
    this.end = null;
  }
}

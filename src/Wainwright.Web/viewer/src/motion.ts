import { Matrix4, Quaternion, Vector3 } from "three";
import type { WayPoint } from "./scene";

const unit = [new Vector3(1, 0, 0), new Vector3(0, 1, 0), new Vector3(0, 0, 1)] as const;

/** A turn on the spot takes as long as pushing the load this far [mm]. */
const turnAsMm = 400;

/** Where the low corner of a folded load is at a share of its way; the way begins where it was folded. */
export function slid(way: WayPoint[], t: number): Matrix4 {
  const first = way[0];
  const begun = first ? new Vector3(...first.shift) : new Vector3();
  const rest = way.map(p => ({ shift: new Vector3(...p.shift).sub(begun).toArray() as [number, number, number], turns: [], turned: null }));
  return along(rest, t, new Vector3()).premultiply(new Matrix4().makeTranslation(begun));
}

/** Where a load is at a share of its way, 0 to 1, turned about its middle. */
export function along(way: WayPoint[], t: number, middle: Vector3): Matrix4 {
  const poses = [{ shift: new Vector3(), turn: new Quaternion() }, ...way.map(p => ({ shift: new Vector3(...p.shift), turn: p.turned ? new Quaternion(...p.turned) : turned(p.turns) }))];
  const lengths = poses.slice(1).map((p, i) => p.shift.distanceTo(poses[i]!.shift) + p.turn.angleTo(poses[i]!.turn) / (Math.PI / 2) * turnAsMm);
  let left = t * lengths.reduce((a, b) => a + b, 0);
  let leg = 0;
  while (leg < lengths.length - 1 && left > lengths[leg]!) left -= lengths[leg++]!;
  const share = lengths[leg] ? Math.min(1, left / lengths[leg]!) : 1;
  const [from, to] = [poses[leg]!, poses[Math.min(leg + 1, poses.length - 1)]!];
  const turn = from.turn.clone().slerp(to.turn, share);
  const shift = from.shift.clone().lerp(to.shift, share).add(middle).sub(middle.clone().applyQuaternion(turn));
  return new Matrix4().compose(shift, turn, new Vector3(1, 1, 1));
}

function turned(turns: number[]): Quaternion {
  return turns.reduce((so, axis) => new Quaternion().setFromAxisAngle(unit[axis] ?? unit[2], Math.PI / 2).multiply(so), new Quaternion());
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

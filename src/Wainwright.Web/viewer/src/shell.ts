import { BoxGeometry, BackSide, Group, Mesh, type Camera, Vector3 } from "three";
import { geometryOf } from "./shapes";
import { edgesOf, route, strokes } from "./strokes";
import type { Ink } from "./ink";
import type { Opening, Place, Van } from "./scene";

type Wall = "left" | "right" | "front" | "rear" | "roof" | "floor";
const outward: Record<Wall, Place> = { left: [0, -1, 0], right: [0, 1, 0], front: [-1, 0, 0], rear: [1, 0, 0], roof: [0, 0, 1], floor: [0, 0, -1] };

/** The base vehicle: only the walls behind the load are drawn, so that one looks in; the rest of the van is phantom. */
export class Shell {
  readonly group = new Group();
  private readonly walls = new Map<Wall, Group>();

  constructor(private readonly van: Van, private readonly ink: Ink) {
    ink.room.side = BackSide;
    const room = geometryOf({ kind: "prism", along: 0, outline: this.profile(), length: van.size[0], yaw: 0, tilt: 0 });
    this.group.add(new Mesh(room, ink.room), strokes(edgesOf([room]), ink.faint));
    for (const wall of Object.keys(outward) as Wall[]) {
      const drawn = new Group();
      this.walls.set(wall, drawn);
      this.group.add(drawn);
    }
    this.arches();
    for (const opening of van.openings) this.opening(opening);
    this.framing();
    this.body();
  }

  /** Walls between the eye and the load are left out. */
  lookFrom(camera: Camera): void {
    const eye = camera.getWorldDirection(new Vector3());
    for (const [wall, drawn] of this.walls) drawn.visible = new Vector3(...outward[wall]).dot(eye) > 0.02;
  }

  private profile(): Place[] {
    const [, w, h] = this.van.size;
    const lean = this.van.taper;
    if (!lean || lean.fromZ >= h) return [[0, 0, 0], [0, w, 0], [0, w, h], [0, 0, h]];
    return [[0, 0, 0], [0, w, 0], [0, w, lean.fromZ], [0, w - lean.inAtRoof, h], [0, lean.inAtRoof, h], [0, 0, lean.fromZ]];
  }

  /** Distance that a wall has come in at a height. */
  private inAt(z: number): number {
    const lean = this.van.taper;
    return lean && z > lean.fromZ ? lean.inAtRoof * (z - lean.fromZ) / (this.van.size[2] - lean.fromZ) : 0;
  }

  private arches(): void {
    for (const { low, high } of this.van.arches) {
      const [l, w, h] = [high[0] - low[0], high[1] - low[1], high[2] - low[2]];
      const box = new BoxGeometry(l, w, h).toNonIndexed().translate(low[0] + l / 2, low[1] + w / 2, low[2] + h / 2);
      const wall = this.walls.get(low[1] < this.van.size[1] / 2 ? "left" : "right")!;
      wall.add(new Mesh(box, this.ink.floor), strokes(edgesOf([box]), this.ink.faint));
    }
  }

  private opening(o: Opening): void {
    const [l, w] = this.van.size;
    const at = (a: number, b: number): Place => {
      switch (o.face) {
        case "front": return [0, a, b];
        case "rear": return [l, a, b];
        case "left": return [a, this.inAt(b), b];
        case "right": return [a, w - this.inAt(b), b];
        case "roof": return [a, b, this.van.size[2]];
      }
    };
    const [a, b, c, d] = [o.from, o.from + o.width, o.sill, o.sill + o.height];
    const around = [at(a, c), at(b, c), at(b, d), at(a, d), at(a, c)];
    const wall = this.walls.get(o.face)!;
    wall.add(route(around, this.ink.phantom));
    if (!o.passable) wall.add(route([at(a, c), at(b, d)], this.ink.phantom));
  }

  private framing(): void {
    const [l, w, h] = this.van.size;
    for (const f of this.van.frames) {
      if (f.kind === "bow") this.walls.get("roof")!.add(route([[f.x, this.inAt(h), h], [f.x, w - this.inAt(h), h]], this.ink.faint));
      else if (f.kind === "floorMember") this.walls.get("floor")!.add(route([[f.x, 0, 0], [f.x, w, 0]], this.ink.faint));
      else for (const side of f.side ? [f.side] : (["left", "right"] as const)) {
        const y = (z: number) => (side === "left" ? this.inAt(z) : w - this.inAt(z));
        const z = f.z ?? 0;
        const points: Place[] = f.kind === "rail" ? [[f.x, y(z), z], [f.toX ?? l, y(z), z]] : [[f.x, y(z), z], [f.x, y(this.van.taper?.fromZ ?? h), this.van.taper?.fromZ ?? h], [f.x, y(h), h]];
        this.walls.get(side)!.add(route(points, this.ink.faint));
      }
    }
  }

  /** Cab and wheels in phantom line: no maker's shape, only enough to know front from rear. */
  private body(): void {
    const [l, w, h] = this.van.size;
    const floor = -520;
    for (const side of ["left", "right"] as const) {
      const y = side === "left" ? -60 : w + 60;
      const nose: Place[] = [[0, y, h + 40], [-380, y, h - 120], [-930, y, 780], [-1780, y, 560], [-1930, y, 250], [-1930, y, floor + 230], [l + 60, y, floor + 230], [l + 60, y, h + 40], [0, y, h + 40]];
      const wall = this.walls.get(side)!;
      wall.add(route(nose, this.ink.phantom));
      wall.add(route([[-330, y, h - 230], [-860, y, 790], [-280, y, 790], [-250, y, h - 230], [-330, y, h - 230]], this.ink.phantom));
      for (const x of this.van.axles) wall.add(route(circle(x, y, floor + 150, 330), this.ink.phantom), route(circle(x, y, floor + 150, 190), this.ink.phantom));
    }
    this.walls.get("floor")!.add(route([[0, -60, 0], [-1400, -40, 0], [-1930, 180, 0], [-1930, w - 180, 0], [-1400, w + 40, 0], [0, w + 60, 0], [l + 60, w + 60, 0], [l + 60, -60, 0], [0, -60, 0]], this.ink.phantom));
  }
}

function circle(x: number, y: number, z: number, r: number): Place[] {
  return Array.from({ length: 41 }, (_, i): Place => [x + r * Math.cos(i * Math.PI / 20), y, z + r * Math.sin(i * Math.PI / 20)]);
}

import { BufferGeometry, Float32BufferAttribute, Group, Mesh, Vector3, type Camera, type Intersection } from "three";
import type { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import type { Ink } from "./ink";
import type { Damp } from "./scene";
import { cross, strokes } from "./strokes";

/** Corners of a quadrilateral on the face of a box, by the axis through it: which of low (0) or high (1) along the two other axes. */
const round = [[0, 0], [1, 0], [1, 1], [0, 1]] as const;

/** Directions that a face can look in: along an axis, down or up it. */
const ways = [0, 1, 2].flatMap(axis => [0, 1].map(side => ({ axis, side })));

interface Face { cell: number; side: number; corners: number[][] }

/** The boards of the van by how wet each piece is, seen from the room: floor, walls and ceiling on their inner face, so that one looks into the van from any side; and a contour where neighbours differ. */
export class DampBoards {
  readonly group = new Group();
  private readonly mesh: Mesh;
  private readonly bands: Float32BufferAttribute;
  private readonly faces: Face[] = [];
  private readonly contours: { way: Vector3; lines: LineSegments2 }[] = [];

  constructor(private readonly damp: Damp, middle: Vector3, private readonly ink: Ink) {
    const [points, normals, index]: [number[], number[], number[]] = [[], [], []];
    for (let cell = 0; cell < damp.across.length; cell++) for (const side of this.sides(cell, middle)) {
      const corners = this.corners(cell, side);
      const first = points.length / 3;
      const normal = [0, 0, 0];
      normal[damp.across[cell]!] = side ? 1 : -1;
      for (const corner of corners) points.push(...corner), normals.push(...normal);
      index.push(...(side ? [0, 1, 2, 0, 2, 3] : [0, 2, 1, 0, 3, 2]).map(i => first + i));
      this.faces.push({ cell, side, corners });
    }
    const shape = new BufferGeometry();
    shape.setAttribute("position", new Float32BufferAttribute(points, 3));
    shape.setAttribute("normal", new Float32BufferAttribute(normals, 3));
    this.bands = new Float32BufferAttribute(new Float32Array(points.length / 3), 1);
    shape.setAttribute("band", this.bands);
    shape.setIndex(index);
    this.mesh = new Mesh(shape, ink.wet);
    this.group.add(this.mesh);
    const pins = damp.pins.flatMap(p => cross(p.at, 16));
    if (pins.length) this.group.add(strokes(pins, ink.fixing));
  }

  /** The part that a ray met; undefined when it met something else, or the back of a dry piece, which is not drawn. */
  ownerOf(hit: Intersection, along: Vector3): string | undefined {
    if (hit.object !== this.mesh || hit.faceIndex == null || !hit.face) return undefined;
    if (hit.face.normal.dot(along) > 0 && this.bands.getX(hit.face.a) < 0.5) return undefined;
    return this.damp.boards[this.damp.sheet[this.faces[Math.floor(hit.faceIndex / 2)]!.cell]!];
  }

  get face(): Mesh { return this.mesh; }

  /** Draws each piece in its band: 0 dry, then one more for each threshold it is over, -1 where nothing is known. */
  draw(bands: number[]): void {
    this.faces.forEach(({ cell }, face) => { for (let i = 0; i < 4; i++) this.bands.setX(face * 4 + i, bands[cell] ?? -1); });
    this.bands.needsUpdate = true;
    for (const { lines } of this.contours.splice(0)) {
      lines.geometry.dispose();
      this.group.remove(lines);
    }
    for (const { axis, side } of ways) {
      const edges = this.contour(bands, this.faces.filter(f => f.side === side && this.damp.across[f.cell] === axis));
      if (!edges.length) continue;
      const drawn = { way: new Vector3().setComponent(axis, side ? 1 : -1), lines: strokes(edges, this.ink.contour) };
      this.contours.push(drawn);
      this.group.add(drawn.lines);
    }
  }

  /** Leaves out contours on faces that are turned away. */
  lookFrom(camera: Camera): void {
    const ahead = camera.getWorldDirection(new Vector3());
    for (const { way, lines } of this.contours) lines.visible = way.dot(ahead) < -1e-6;
  }

  dispose(): void {
    for (const child of this.group.children) (child as Mesh).geometry.dispose();
  }

  /** Edges that two pieces of one board share and that part two bands. */
  private contour(bands: number[], faces: Face[]): number[] {
    const seen = new Map<string, number>();
    const lines: number[] = [];
    for (const { cell, corners } of faces) corners.forEach((from, i) => {
      const to = corners[(i + 1) % 4]!;
      const key = `${this.damp.sheet[cell]} ${from.map((v, a) => Math.round(v + to[a]!)).join(" ")}`;
      const other = seen.get(key);
      if (other === undefined) seen.set(key, cell);
      else if (bands[other] !== bands[cell]) lines.push(...from, ...to);
    });
    return lines;
  }

  /** Floor, walls and ceiling are looked at from the middle of the room, what stands in it from both sides. */
  private sides(cell: number, middle: Vector3): number[] {
    if (!this.damp.shell[this.damp.sheet[cell]!]) return [0, 1];
    const across = this.damp.across[cell]!;
    const at = (this.damp.boxes[cell * 6 + across]! + this.damp.boxes[cell * 6 + 3 + across]!) / 2;
    return [at < middle.getComponent(across) ? 1 : 0];
  }

  private corners(cell: number, side: number): number[][] {
    const across = this.damp.across[cell]!;
    const [u, v] = [(across + 1) % 3, (across + 2) % 3];
    return round.map(([a, b]) => {
      const corner = [0, 0, 0];
      corner[across] = this.damp.boxes[cell * 6 + side * 3 + across]!;
      corner[u] = this.damp.boxes[cell * 6 + a * 3 + u]!;
      corner[v] = this.damp.boxes[cell * 6 + b * 3 + v]!;
      return corner;
    });
  }
}

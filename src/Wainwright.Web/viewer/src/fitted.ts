import { Box3, BufferGeometry, Group, Mesh, Vector3 } from "three";
import { mergeGeometries } from "three/addons/utils/BufferGeometryUtils.js";
import type { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { geometryOf } from "./shapes";
import { edgesOf, strokes } from "./strokes";
import type { Ink } from "./ink";
import type { Part, Verdict } from "./scene";

/** How a part is drawn: whole, see-through, out of the van, picked, on its way out, or picked where only its lines are drawn. */
export type State = "whole" | "ghost" | "out" | "marked" | "moving" | "lined";

/** One fitted part in the drawing. */
export class Fitted {
  readonly group = new Group();
  readonly solids: BufferGeometry[];
  readonly box = new Box3();
  readonly mesh: Mesh;
  private readonly edges: LineSegments2;
  private readonly hidden: LineSegments2;
  state: State = "whole";
  verdict: Verdict | null = null;

  constructor(readonly part: Part, private readonly ink: Ink) {
    this.solids = part.solids.map(geometryOf);
    const whole = mergeGeometries(this.solids.map(s => s.deleteAttribute("uv"))) ?? new BufferGeometry();
    whole.computeBoundingBox();
    this.box.copy(whole.boundingBox!);
    this.mesh = new Mesh(whole, ink.face);
    const outline = edgesOf(this.solids);
    this.edges = strokes(outline, ink.outline);
    this.hidden = strokes(outline, ink.hidden);
    this.hidden.renderOrder = 5;
    this.group.add(this.mesh, this.edges, this.hidden);
    this.draw("whole");
  }

  get middle(): Vector3 { return this.box.getCenter(new Vector3()).applyQuaternion(this.group.quaternion).add(this.group.position); }

  draw(state: State): void {
    this.state = state;
    const marked = state === "marked" || state === "moving" || state === "lined";
    this.group.visible = state !== "out";
    this.mesh.visible = state !== "ghost" && state !== "lined";
    this.hidden.visible = marked;
    this.mesh.material = state === "moving" ? this.ink.faceMoving : this.verdict === "short" ? this.ink.faceShort : this.verdict === "unknown" ? this.ink.faceUnknown : marked && !this.verdict ? this.ink.faceMarked : this.ink.face;
    this.edges.material = state === "ghost" ? this.ink.ghost : state === "moving" ? this.ink.moving : marked ? this.ink.marked : this.ink.outline;
  }

  dispose(): void {
    for (const shape of [...this.solids, this.mesh.geometry, this.edges.geometry, this.hidden.geometry]) shape.dispose();
  }
}

import { BufferGeometry, Float32BufferAttribute, Group, Mesh, Plane, Vector3, type Camera } from "three";
import type { Fitted } from "./fitted";
import type { Ink } from "./ink";
import { axes, type AxisName, type Verdict } from "./scene";
import { cutSolid, nothingCut } from "./section";
import { strokes } from "./strokes";

/** Angle and spacing of the hatching by what a part belongs to, so that neighbours differ as on a drawing. */
const hatching: Record<string, [degrees: number, spacingMm: number]> = {
  furniture: [45, 34], lining: [135, 22], insulation: [60, 60], floor: [135, 18], openings: [45, 18],
  water: [30, 46], waste: [150, 46], gas: [45, 12], dc: [135, 30], mains: [45, 26], heating: [60, 22],
  appliance: [120, 40], safety: [45, 14], vehicle: [45, 16], loose: [20, 70],
};

/** The same where parts are drawn by how they hold; a part that holds is left plain. */
const judged: Record<Verdict, [degrees: number, spacingMm: number]> = { short: [45, 14], unknown: [135, 52], holds: [45, 100_000] };

/** The cut through the van: what lies before the plane is taken away, cut faces are hatched. */
export class Cut {
  readonly group = new Group();
  private axis: AxisName | null = null;
  private at = 0;
  private owners: { mesh: Mesh; ids: string[] }[] = [];
  plane: Plane | null = null;

  constructor(private readonly ink: Ink) { }

  set(axis: AxisName | null, at: number): void {
    this.axis = axis;
    this.at = at;
  }

  /** Takes away the half towards the eye. */
  face(camera: Camera): void {
    if (!this.axis) {
      this.plane = null;
      this.ink.clip([]);
      return;
    }
    const k = axes.indexOf(this.axis);
    const away = camera.getWorldDirection(new Vector3()).getComponent(k) >= 0 ? 1 : -1;
    this.plane = new Plane(new Vector3().setComponent(k, away), -away * this.at);
    this.ink.clip([this.plane]);
  }

  rebuild(parts: Iterable<Fitted>): void {
    this.clear();
    if (!this.axis) return;
    const k = axes.indexOf(this.axis);
    const cut = nothingCut();
    const [faceIds, thinIds]: [string[], string[]] = [[], []];
    for (const part of parts) {
      if (part.state !== "whole" && part.state !== "marked") continue;
      const [degrees, spacing] = part.verdict ? judged[part.verdict] : hatching[part.part.system] ?? [45, 30];
      for (const solid of part.solids) {
        cutSolid(cut, solid, part.group.position, k, this.at, degrees, spacing);
        while (faceIds.length < cut.faces.length / 9) faceIds.push(part.part.id);
        while (thinIds.length < cut.thin.length / 9) thinIds.push(part.part.id);
      }
    }
    this.owners = [{ mesh: this.fill(cut.faces, false), ids: faceIds }, { mesh: this.fill(cut.thin, true), ids: thinIds }];
    if (cut.hatch.length) this.group.add(strokes(cut.hatch, this.ink.hatch));
    if (cut.outlines.length) this.group.add(strokes(cut.outlines, this.ink.cutEdge));
    this.group.children.forEach((child, i) => { child.renderOrder = 1 + i; });
  }

  /** The cut faces, to be picked like parts. */
  get faces(): Mesh[] { return this.owners.map(o => o.mesh); }

  ownerOf(mesh: unknown, face: number): string | undefined {
    return this.owners.find(o => o.mesh === mesh)?.ids[face];
  }

  clear(): void {
    for (const child of [...this.group.children]) {
      (child as Mesh).geometry.dispose();
      this.group.remove(child);
    }
    this.owners = [];
  }

  private fill(triangles: number[], thin: boolean): Mesh {
    const shape = new BufferGeometry();
    shape.setAttribute("position", new Float32BufferAttribute(triangles, 3));
    const mesh = new Mesh(shape, thin ? this.ink.cutThin : this.ink.cutFace);
    mesh.visible = triangles.length > 0;
    this.group.add(mesh);
    return mesh;
  }
}

import { BoxGeometry, BufferGeometry, CylinderGeometry, Float32BufferAttribute, Matrix4, Vector3 } from "three";
import type { Place, Prism, Solid } from "./scene";

/** A solid as triangles where it stands in the van. Every kind is convex. */
export function geometryOf(solid: Solid): BufferGeometry {
  const shape = unturned(solid);
  if (solid.yaw === 0 && solid.tilt === 0) return shape;
  shape.computeBoundingBox();
  const middle = shape.boundingBox!.getCenter(new Vector3());
  const turn = new Matrix4().makeRotationZ(solid.yaw * Math.PI / 180)
    .multiply(new Matrix4().makeRotationX(solid.tilt * Math.PI / 180));
  return shape.translate(-middle.x, -middle.y, -middle.z).applyMatrix4(turn).translate(middle.x, middle.y, middle.z);
}

function unturned(solid: Solid): BufferGeometry {
  switch (solid.kind) {
    case "box": {
      const [l, w, h] = solid.size;
      return new BoxGeometry(l, w, h).toNonIndexed().translate(solid.at[0] + l / 2, solid.at[1] + w / 2, solid.at[2] + h / 2);
    }
    case "cylinder": {
      const shape = new CylinderGeometry(solid.diameter / 2, solid.diameter / 2, solid.length, 24).toNonIndexed();
      if (solid.along === 0) shape.rotateZ(-Math.PI / 2);
      if (solid.along === 2) shape.rotateX(Math.PI / 2);
      const middle: Place = [...solid.at];
      middle[solid.along] = middle[solid.along]! + solid.length / 2;
      return shape.translate(...middle);
    }
    case "prism": return prism(solid);
  }
}

function prism({ outline, along, length }: Prism): BufferGeometry {
  const far = outline.map(p => p.map((v, i) => (i === along ? v + length : v)) as Place);
  const corners: Place[] = [];
  const n = outline.length;
  for (let i = 1; i < n - 1; i++) {
    corners.push(outline[0]!, outline[i + 1]!, outline[i]!, far[0]!, far[i]!, far[i + 1]!);
  }
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    corners.push(outline[i]!, outline[j]!, far[j]!, outline[i]!, far[j]!, far[i]!);
  }
  const shape = new BufferGeometry();
  shape.setAttribute("position", new Float32BufferAttribute(corners.flat(), 3));
  if (pointsInward(shape, corners)) {
    for (let i = 0; i < corners.length; i += 3) [corners[i + 1], corners[i + 2]] = [corners[i + 2]!, corners[i + 1]!];
    shape.setAttribute("position", new Float32BufferAttribute(corners.flat(), 3));
  }
  shape.computeVertexNormals();
  return shape;
}

/** An outline may run either way round; its signed volume tells which. */
function pointsInward(shape: BufferGeometry, corners: Place[]): boolean {
  shape.computeBoundingBox();
  const middle = shape.boundingBox!.getCenter(new Vector3());
  let volume = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [corners[i]!, corners[i + 1]!, corners[i + 2]!].map(p => new Vector3(...p).sub(middle)) as [Vector3, Vector3, Vector3];
    volume += a.dot(b.cross(c));
  }
  return volume < 0;
}

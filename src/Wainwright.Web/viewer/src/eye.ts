import { Box3, OrthographicCamera, Vector3 } from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";

/** Where one stands to look, as the direction from the van to the eye. */
export const standpoints = {
  section: [-0.2, -1, 0.3],
  side: [0, -1, 0],
  plan: [0, -0.0001, 1],
  rear: [1, 0, 0],
  corner: [0.85, -1, 0.75],
} as const satisfies Record<string, readonly [number, number, number]>;
export type Standpoint = keyof typeof standpoints;

/** The eye before the drawing board: parallel projection, turned by mouse, touch or keys. */
export class Eye {
  readonly camera = new OrthographicCamera(-1, 1, 1, -1, 10, 60_000);
  private readonly controls: OrbitControls;
  private readonly subject = new Box3(new Vector3(0, 0, 0), new Vector3(3000, 1800, 1900));
  private aspect = 1;

  constructor(canvas: HTMLCanvasElement, moved: () => void) {
    this.camera.up.set(0, 0, 1);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.enableDamping = false;
    this.controls.minZoom = 0.4;
    this.controls.maxZoom = 30;
    this.stand("section");
    this.controls.addEventListener("change", moved);
  }

  subjectIs(box: Box3): void {
    this.subject.copy(box);
    this.fit();
  }

  stand(where: Standpoint): void {
    const away = new Vector3(...standpoints[where]).normalize();
    this.controls.target.copy(this.subject.getCenter(new Vector3()));
    this.camera.position.copy(this.controls.target).addScaledVector(away, 20_000);
    this.camera.zoom = 1;
    this.controls.update();
    this.fit();
  }

  resized(width: number, height: number): void {
    this.aspect = width / Math.max(height, 1);
    this.fit();
  }

  turn(right: number, up: number): void {
    const away = this.camera.position.clone().sub(this.controls.target);
    const flat = Math.hypot(away.x, away.y);
    const around = Math.atan2(away.y, away.x) + right;
    const high = Math.max(-1.55, Math.min(1.5705, Math.atan2(away.z, flat) + up));
    const r = away.length();
    this.camera.position.set(Math.cos(around) * Math.cos(high), Math.sin(around) * Math.cos(high), Math.sin(high)).multiplyScalar(r).add(this.controls.target);
    this.controls.update();
  }

  shift(right: number, up: number): void {
    const step = (this.camera.top - this.camera.bottom) / this.camera.zoom * 0.06;
    const [x, y] = [new Vector3(), new Vector3()];
    this.camera.matrixWorld.extractBasis(x, y, new Vector3());
    const by = x.multiplyScalar(right * step).addScaledVector(y, up * step);
    this.camera.position.add(by);
    this.controls.target.add(by);
    this.controls.update();
  }

  /** Moves by one step of a key; false when the key means nothing here. */
  key(key: string): boolean {
    const step = Math.PI / 18;
    switch (key) {
      case "ArrowLeft": this.turn(-step, 0); break;
      case "ArrowRight": this.turn(step, 0); break;
      case "ArrowUp": this.turn(0, step); break;
      case "ArrowDown": this.turn(0, -step); break;
      case "Shift+ArrowLeft": this.shift(-1, 0); break;
      case "Shift+ArrowRight": this.shift(1, 0); break;
      case "Shift+ArrowUp": this.shift(0, 1); break;
      case "Shift+ArrowDown": this.shift(0, -1); break;
      case "+": case "=": this.zoom(1.25); break;
      case "-": this.zoom(0.8); break;
      case "Home": this.stand("section"); break;
      default: return false;
    }
    return true;
  }

  zoom(by: number): void {
    this.camera.zoom = Math.max(0.4, Math.min(30, this.camera.zoom * by));
    this.camera.updateProjectionMatrix();
  }

  /** Brings the whole subject into the frame as seen from here. */
  private fit(): void {
    this.camera.updateMatrixWorld();
    const [x, y] = [new Vector3(), new Vector3()];
    this.camera.matrixWorld.extractBasis(x, y, new Vector3());
    const { min, max } = this.subject;
    const middle = this.subject.getCenter(new Vector3());
    let [wide, high] = [0, 0];
    for (const cx of [min.x, max.x]) for (const cy of [min.y, max.y]) for (const cz of [min.z, max.z]) {
      const from = new Vector3(cx, cy, cz).sub(middle);
      wide = Math.max(wide, Math.abs(from.dot(x)));
      high = Math.max(high, Math.abs(from.dot(y)));
    }
    const half = Math.max(high * 1.2, wide * 1.07 / this.aspect);
    Object.assign(this.camera, { left: -half * this.aspect, right: half * this.aspect, top: half, bottom: -half });
    this.camera.updateProjectionMatrix();
  }

  dispose(): void { this.controls.dispose(); }
}

import { Vector3, type Camera } from "three";
import type { Place } from "./scene";

interface Letter { at: Vector3; element: HTMLElement }

/** Words on the drawing: real text over the canvas, so that it stays crisp and follows the page's font. */
export class Lettering {
  private readonly layer = document.createElement("div");
  private readonly letters = new Map<string, Letter>();

  constructor(canvas: HTMLCanvasElement) {
    this.layer.className = "lettering";
    this.layer.ariaHidden = "true";
    canvas.after(this.layer);
  }

  put(key: string, at: Place | Vector3, text: string, look: string): void {
    this.take(key);
    const element = document.createElement("span");
    element.className = look;
    element.textContent = text;
    this.layer.append(element);
    this.letters.set(key, { at: at instanceof Vector3 ? at.clone() : new Vector3(...at), element });
  }

  move(key: string, at: Vector3): void { this.letters.get(key)?.at.copy(at); }

  take(key: string): void {
    this.letters.get(key)?.element.remove();
    this.letters.delete(key);
  }

  takeAll(start: string): void {
    for (const key of [...this.letters.keys()]) if (key.startsWith(start)) this.take(key);
  }

  /** Leaves out what would only pile up as seen from here. */
  show(start: string, shown: boolean): void {
    for (const [key, { element }] of this.letters) if (key.startsWith(start)) element.hidden = !shown;
  }

  draw(camera: Camera, width: number, height: number): void {
    const p = new Vector3();
    for (const { at, element } of this.letters.values()) {
      p.copy(at).project(camera);
      element.style.transform = `translate(${((p.x + 1) / 2 * width).toFixed(1)}px, ${((1 - p.y) / 2 * height).toFixed(1)}px)`;
    }
  }

  dispose(): void { this.layer.remove(); }
}

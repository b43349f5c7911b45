import { Vector3, type Camera } from "three";
import type { Place } from "./scene";

interface Letter { at: Vector3; element: HTMLElement; wide: number; high: number }

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
    this.letters.set(key, { at: at instanceof Vector3 ? at.clone() : new Vector3(...at), element, wide: element.offsetWidth, high: element.offsetHeight });
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
    const figures: { letter: Letter; x: number; y: number }[] = [];
    for (const [key, letter] of this.letters) {
      p.copy(letter.at).project(camera);
      const [x, y] = [(p.x + 1) / 2 * width, (1 - p.y) / 2 * height];
      if (key.startsWith("held")) figures.push({ letter, x, y });
      else place(letter, x, y);
    }
    // figures that would lie over one another move down until each can be read
    const set: typeof figures = [];
    for (const figure of figures.sort((a, b) => a.y - b.y)) {
      for (const other of set) if (Math.abs(other.x - figure.x) < Math.max(other.letter.wide, figure.letter.wide) + 2 && figure.y < other.y + other.letter.high + 1 && figure.y > other.y - figure.letter.high) figure.y = other.y + other.letter.high + 1;
      set.push(figure);
      place(figure.letter, figure.x, figure.y);
    }
  }

  dispose(): void { this.layer.remove(); }
}

function place({ element }: Letter, x: number, y: number): void { element.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)`; }

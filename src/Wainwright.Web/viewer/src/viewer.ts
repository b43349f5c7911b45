import { Box3, Group, Raycaster, Scene, Vector2, Vector3, WebGLRenderer } from "three";
import { Cut } from "./cut";
import { DampBoards } from "./damp";
import { Eye, type Standpoint } from "./eye";
import { Fitted } from "./fitted";
import { Ink } from "./ink";
import { Lettering } from "./lettering";
import { along, Run, slid } from "./motion";
import { Shell } from "./shell";
import { arrow, cross, edgesOf, route, strokes } from "./strokes";
import { geometryOf } from "./shapes";
import { tape } from "./tape";
import type { AxisName, Damp, Drawing, Judged, Move, Place, Solid } from "./scene";

interface Host { invokeMethodAsync(name: "Picked", id: string | null): Promise<void> }

/** Opens the drawing on a canvas; null when this browser has no WebGL. Draws only when something changed. */
export function open(canvas: HTMLCanvasElement, host: Host): Board | null {
  const gl = canvas.getContext("webgl2", { antialias: true, alpha: true });
  return gl ? new Board(canvas, gl, host) : null;
}

class Board {
  private readonly renderer: WebGLRenderer;
  private readonly scene = new Scene();
  private readonly ink = new Ink();
  private readonly letters: Lettering;
  private readonly eye: Eye;
  private readonly cut = new Cut(this.ink);
  private readonly run = new Run();
  private readonly parts = new Map<string, Fitted>();
  private readonly services = new Group();
  private readonly routes = new Group();
  private readonly extra = new Group();
  private readonly draftGroup = new Group();
  private readonly resize: ResizeObserver;
  private readonly stopListening = new AbortController();
  private shell: Shell | null = null;
  private drawing: Drawing | null = null;
  private marked: string | null = null;
  private move: Move | null = null;
  private judged: Judged | null = null;
  private damp: Damp | null = null;
  private boards: DampBoards | null = null;
  private readonly ghosts = new Set<string>();
  private readonly away = new Set<string>();
  private apart = 0;
  private asked = 0;
  private width = 1;
  private height = 1;

  constructor(private readonly canvas: HTMLCanvasElement, gl: WebGL2RenderingContext, private readonly host: Host) {
    this.renderer = new WebGLRenderer({ canvas, context: gl, antialias: true, alpha: true });
    this.renderer.localClippingEnabled = true;
    this.letters = new Lettering(canvas);
    this.eye = new Eye(canvas, () => this.turned());
    this.scene.add(this.cut.group, this.services, this.routes, this.extra, this.draftGroup);
    this.resize = new ResizeObserver(() => this.fitCanvas());
    this.resize.observe(canvas.parentElement!);
    this.ink.read(canvas);
    this.fitCanvas();
    this.listen();
  }

  /** Draws a van with its parts; what was marked, cut or seen through stays so. */
  show(drawing: Drawing): void {
    this.run.stop();
    this.clear();
    this.drawing = drawing;
    this.shell = new Shell(drawing.van, this.ink);
    this.scene.add(this.shell.group);
    const subject = new Box3(new Vector3(0, -200, -60), new Vector3(...drawing.van.size));
    for (const part of drawing.parts) {
      if (part.solids.length === 0) continue;
      const fitted = new Fitted(part, this.ink);
      this.parts.set(part.id, fitted);
      this.scene.add(fitted.group);
      subject.union(fitted.box);
    }
    for (const line of drawing.lines) if (line.route.length > 1) this.routes.add(route(line.route, ["dc", "mains", "signal"].includes(line.medium) ? this.ink.serviceDashed : this.ink.service));
    this.services.add(tape(drawing, this.ink, this.letters));
    this.eye.subjectIs(subject);
    if (!this.canvas.dataset["shown"]) this.eye.stand("section");
    this.ink.resized(this.width, this.height);
    this.restate();
    this.canvas.dataset["shown"] = String(this.parts.size);
  }

  mark(id: string | null): void {
    this.marked = id;
    this.restate();
    this.canvas.dataset["marked"] = id ?? "";
  }

  stand(where: Standpoint): void {
    this.eye.stand(where);
    this.turned();
    this.canvas.dataset["stand"] = where;
  }

  /** Cuts the van open across an axis at a distance, or closes it. */
  open(axis: AxisName | null, at: number): void {
    this.cut.set(axis, at);
    this.restate();
    this.canvas.dataset["cut"] = axis ? `${axis} ${Math.round(at)}` : "";
  }

  /** Draws these systems see-through. */
  seeThrough(systems: string[]): void {
    this.ghosts.clear();
    for (const system of systems) this.ghosts.add(system);
    this.restate();
    this.canvas.dataset["ghosts"] = systems.join(" ");
  }

  /** Leaves these parts out, as at a stage of the strip-down. */
  without(ids: string[]): void {
    this.away.clear();
    for (const id of ids) this.away.add(id);
    this.restate();
  }

  /** Draws the parts pulled apart, 0 to 1. */
  explode(how: number): void {
    this.apart = how;
    this.restate();
  }

  /** Turns, moves or draws nearer by one step; the keys and the buttons both come here. */
  nudge(key: string): boolean {
    if (!this.eye.key(key)) return false;
    this.turned();
    return true;
  }

  /** Draws every part by how it holds, and the push that breaks the one asked about. */
  judge(judged: Judged | null): void {
    this.judged = judged;
    const verdicts = new Map(judged?.parts.map(p => [p.id, p.verdict]));
    for (const part of this.parts.values()) part.verdict = verdicts.get(part.part.id) ?? null;
    this.extra.clear();
    for (const at of judged?.fixings ?? []) this.extra.add(strokes(cross(at, 22), this.ink.fixing));
    if (judged?.push) this.extra.add(strokes(arrow(judged.push.at, judged.push.along, 480), this.ink.push));
    this.restate();
    this.canvas.dataset["judged"] = (judged?.parts ?? []).map(p => `${p.id}:${p.verdict}`).join(" ");
  }

  /** Draws the boards by how wet they are and everything else as thin lines; nothing draws the van as it is again. */
  soak(damp: Damp | null): void {
    this.dry();
    this.damp = damp;
    this.routes.visible = damp === null;
    if (damp) {
      this.ink.wet.uniforms["bands"]!.value = damp.bands;
      this.boards = new DampBoards(damp, new Vector3(...(this.drawing?.van.size ?? [0, 0, 0])).multiplyScalar(0.5), this.ink);
      this.scene.add(this.boards.group);
    }
    this.restate();
    this.canvas.dataset["soaked"] = damp ? String(damp.across.length) : "";
  }

  /** The band of each piece on the day shown. */
  wet(bands: number[], day: string): void {
    this.boards?.draw(bands);
    this.boards?.lookFrom(this.eye.camera);
    this.canvas.dataset["day"] = day;
    this.ask();
  }

  private dry(): void {
    if (!this.boards) return;
    this.scene.remove(this.boards.group);
    this.boards.dispose();
    this.boards = null;
  }

  /** Plays one step of a way out. Resolves when the step has been drawn to its end. */
  async play(move: Move | null, seconds: number): Promise<void> {
    this.run.stop();
    this.move = move;
    delete this.canvas.dataset["played"];
    this.restate();
    this.extra.clear();
    if (!move) return;
    for (const at of move.fixings) this.extra.add(strokes(cross(at, 22), this.ink.fixing));
    const parts = move.moving.map(id => this.parts.get(id)).filter(p => p !== undefined);
    const load = move.folded ? [this.fold(move.folded, parts)] : parts;
    const middle = load.reduce((box, part) => box.union(part.box), new Box3()).getCenter(new Vector3());
    const shift = (t: number) => {
      const to = move.folded ? slid(move.path, t) : along(move.path, t, middle);
      for (const part of load) part.group.position.setFromMatrixPosition(to), part.group.quaternion.setFromRotationMatrix(to);
      this.label();
      this.ask();
    };
    this.label();
    if (move.path.length) shift(0);
    if (await this.run.start(seconds, move.path.length ? shift : () => { })) this.canvas.dataset["played"] = [...move.gone, ...move.moving].join(" ") || "none";
  }

  /** A soft load goes as the box it is folded to. */
  private fold(size: Place, parts: Fitted[]): Fitted {
    for (const part of parts) part.draw("out");
    const box = new Fitted({ id: parts[0]?.part.id ?? "", name: "", system: "", solids: [{ kind: "box", at: [0, 0, 0], size, yaw: 0, tilt: 0 }] }, this.ink);
    box.draw("moving");
    this.extra.add(box.group);
    return box;
  }

  /** A part being typed in, in dashed line. */
  draft(solid: Solid | null): void {
    this.draftGroup.clear();
    if (solid) this.draftGroup.add(strokes(edgesOf([geometryOf(solid)]), this.ink.ghostly));
    this.canvas.dataset["draft"] = solid ? "yes" : "";
    this.ask();
  }

  /** Reads the page's colours again. */
  repaint(): void {
    this.ink.read(this.canvas);
    this.ask();
  }

  dispose(): void {
    cancelAnimationFrame(this.asked);
    this.stopListening.abort();
    this.dry();
    this.run.stop();
    this.resize.disconnect();
    this.clear();
    this.letters.dispose();
    this.eye.dispose();
    this.ink.dispose();
    this.renderer.dispose();
  }

  private clear(): void {
    for (const part of this.parts.values()) {
      this.scene.remove(part.group);
      part.dispose();
    }
    this.parts.clear();
    this.services.clear();
    this.routes.clear();
    this.extra.clear();
    this.cut.clear();
    if (this.shell) this.scene.remove(this.shell.group);
    this.letters.takeAll("");
  }

  private restate(): void {
    const middle = this.drawing ? new Vector3(...this.drawing.van.size).multiplyScalar(0.5) : new Vector3();
    for (const part of this.parts.values()) {
      const { id, system } = part.part;
      part.group.position.copy(part.box.getCenter(new Vector3()).sub(middle).multiply(new Vector3(0.35, 0.8, 0.6)).multiplyScalar(this.apart));
      part.group.quaternion.identity();
      if (this.move?.moving.includes(id)) part.draw("moving");
      else if (this.move?.gone.includes(id) || this.away.has(id)) part.draw("out");
      else if (this.damp) part.draw(id === this.marked ? "lined" : "ghost");
      else if (id === this.marked || this.move?.about.includes(id)) part.draw("marked");
      else part.draw(this.ghosts.has(system) ? "ghost" : "whole");
    }
    this.turned();
    this.cut.rebuild(this.parts.values());
    this.label();
  }

  private label(): void {
    this.letters.takeAll("balloon");
    this.letters.takeAll("held");
    for (const { id, verdict, text } of this.judged?.parts ?? []) {
      const part = this.parts.get(id);
      if (part && text && part.state === "whole") this.letters.put(`held ${id}`, part.middle, text, `held ${verdict}`);
    }
    if (this.judged?.push) this.letters.put("held push", this.judged.push.at.map((v, i) => v + this.judged!.push!.along[i]! * 500) as Place, this.judged.push.text, "held push");
    for (const { key, at, text, look } of this.damp?.pins ?? []) this.letters.put(`held ${key}`, at, text, `held ${look}`);
    for (const part of this.parts.values()) if (part.state === "marked" || part.state === "moving" || part.state === "lined") {
      const top = part.middle;
      this.letters.put(`balloon ${part.part.id}`, top, part.part.id, "balloon");
    }
  }

  private turned(): void {
    this.eye.camera.updateMatrixWorld();
    const before = this.cut.plane?.normal.clone();
    this.cut.face(this.eye.camera);
    if (before && this.cut.plane && !before.equals(this.cut.plane.normal)) this.cut.rebuild(this.parts.values());
    this.boards?.lookFrom(this.eye.camera);
    this.shell?.lookFrom(this.eye.camera);
    this.letters.show("tape", Math.abs(this.eye.camera.getWorldDirection(new Vector3()).x) < 0.9);
    this.ask();
  }

  private ask(): void {
    this.asked ||= requestAnimationFrame(() => {
      this.asked = 0;
      this.renderer.render(this.scene, this.eye.camera);
      this.letters.draw(this.eye.camera, this.width, this.height);
    });
  }

  private fitCanvas(): void {
    const frame = this.canvas.parentElement!;
    [this.width, this.height] = [Math.max(1, frame.clientWidth), Math.max(1, frame.clientHeight)];
    this.renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    this.renderer.setSize(this.width, this.height, false);
    this.ink.resized(this.width, this.height);
    this.eye.resized(this.width, this.height);
    this.ask();
  }

  private at(event: PointerEvent): string | null {
    const { left, top, width, height } = this.canvas.getBoundingClientRect();
    const ray = new Raycaster();
    ray.setFromCamera(new Vector2((event.clientX - left) / width * 2 - 1, 1 - (event.clientY - top) / height * 2), this.eye.camera);
    const solid = [...this.parts.values()].filter(p => p.group.visible && p.mesh.visible);
    const owner = new Map(solid.map(p => [p.mesh as unknown, p] as const));
    for (const hit of ray.intersectObjects([...(this.boards ? [this.boards.face] : []), ...solid.map(p => p.mesh), ...this.cut.faces.filter(m => m.visible)], false)) {
      const board = this.boards?.ownerOf(hit, ray.ray.direction);
      if (board && (!this.cut.plane || this.cut.plane.distanceToPoint(hit.point) >= -0.5)) return board;
      const cutId = hit.faceIndex == null ? undefined : this.cut.ownerOf(hit.object, hit.faceIndex);
      if (cutId) return cutId;
      const part = owner.get(hit.object);
      if (part && (part.state === "moving" || !this.cut.plane || this.cut.plane.distanceToPoint(hit.point) >= -0.5)) return part.part.id;
    }
    return null;
  }

  private listen(): void {
    const { signal } = this.stopListening;
    let down: [number, number] | null = null;
    this.canvas.addEventListener("pointerdown", e => { down = e.isPrimary ? [e.clientX, e.clientY] : null; }, { signal });
    this.canvas.addEventListener("pointerup", e => {
      // a press that moved is a turn of the drawing, not a pick
      if (down && Math.hypot(e.clientX - down[0], e.clientY - down[1]) <= 4) void this.host.invokeMethodAsync("Picked", this.at(e));
      down = null;
    }, { signal });
    this.canvas.addEventListener("pointermove", e => { if (e.pointerType === "mouse" && e.buttons === 0) this.hover(this.at(e)); }, { signal });
    this.canvas.addEventListener("pointerleave", () => this.hover(null), { signal });
    this.canvas.addEventListener("keydown", e => {
      if (e.ctrlKey || e.altKey || e.metaKey) return;
      if (this.nudge(e.shiftKey && e.key.startsWith("Arrow") ? `Shift+${e.key}` : e.key)) e.preventDefault();
    }, { signal });
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => this.repaint(), { signal });
    document.addEventListener("wain:theme", () => this.repaint(), { signal });
  }

  private hover(id: string | null): void {
    this.letters.take("hover");
    const part = id ? this.parts.get(id) : undefined;
    if (part && id !== this.marked) this.letters.put("hover", part.middle, `${part.part.id} ${part.part.name}`, "hover");
    this.ask();
  }
}

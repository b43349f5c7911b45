import { Color, DoubleSide, MeshBasicMaterial, ShaderMaterial, Vector2 } from "three";
import { LineMaterial } from "three/addons/lines/LineMaterial.js";
import { Plane } from "three";

/** The inks and papers of the drawing, read from the page's own style so that light, dark and print agree. */
export class Ink {
  readonly size = new Vector2(1, 1);
  readonly outline = this.pen(1.3);
  readonly moving = this.pen(2.4);
  readonly marked = this.pen(2.8);
  readonly hidden = this.pen(1.4, { dash: 26, gap: 18, behind: true });
  readonly faint = this.pen(1);
  readonly ghost = this.pen(1, { opacity: 0.28 });
  readonly phantom = this.pen(1, { dash: 60, gap: 22 });
  readonly hatch = this.pen(0.9, { opacity: 0.8, lift: 60 });
  readonly cutEdge = this.pen(2.2, { lift: 90 });
  readonly service = this.pen(2);
  readonly serviceDashed = this.pen(2, { dash: 40, gap: 24 });
  readonly push = this.pen(4, { behind: true });
  readonly fixing = this.pen(2.4, { behind: true });
  readonly ghostly = this.pen(2, { dash: 26, gap: 14, behind: true });
  readonly face = wash(true);
  readonly faceMarked = wash(true);
  readonly faceMoving = wash(false);
  // close hatching falls short, wide hatching cannot be told; a part that holds is left plain
  readonly faceShort = wash(true, { spacing: 6, width: 2, slope: 1 });
  readonly faceUnknown = wash(true, { spacing: 16, width: 1.2, slope: -1 });
  readonly wet = soaked();
  readonly contour = this.pen(2, { lift: 60 });
  readonly room = wash(false);
  readonly floor = wash(false);
  readonly cutFace = new MeshBasicMaterial({ side: DoubleSide, polygonOffset: true, polygonOffsetFactor: -1, polygonOffsetUnits: -10 });
  readonly cutThin = new MeshBasicMaterial({ side: DoubleSide, polygonOffset: true, polygonOffsetFactor: -1, polygonOffsetUnits: -20 });

  private readonly pens: LineMaterial[];
  private readonly clipped = [this.outline, this.marked, this.ghost, this.face, this.faceMarked, this.faceShort, this.faceUnknown, this.service, this.serviceDashed, this.wet, this.contour];

  constructor() {
    this.pens = Object.values(this).filter((m): m is LineMaterial => m instanceof LineMaterial);
  }

  read(from: Element): void {
    const style = getComputedStyle(from);
    const colour = (name: string) => new Color(style.getPropertyValue(name).trim() || "#888");
    const [ink, faint, accent, paper, room, shade, tint] = ["--ink", "--ink-faint", "--accent", "--paper", "--room", "--shade", "--tint"].map(colour) as [Color, Color, Color, Color, Color, Color, Color];
    for (const pen of [this.outline, this.contour, this.cutEdge, this.hatch, this.ghost, this.service, this.serviceDashed]) pen.color = ink;
    for (const pen of [this.faint, this.phantom]) pen.color = faint;
    for (const pen of [this.marked, this.hidden, this.moving, this.fixing, this.push, this.ghostly]) pen.color = accent;
    set(this.face, paper, shade);
    set(this.faceMarked, tint, shade);
    set(this.faceMoving, tint, shade);
    for (const hatched of [this.faceShort, this.faceUnknown]) {
      set(hatched, paper, shade);
      (hatched.uniforms["ink"]!.value as Color).copy(ink);
      hatched.uniforms["pixels"]!.value = Math.min(devicePixelRatio, 2);
    }
    set(this.wet, paper, shade);
    (this.wet.uniforms["ink"]!.value as Color).copy(ink);
    (this.wet.uniforms["water"]!.value as Color).copy(accent);
    this.wet.uniforms["pixels"]!.value = Math.min(devicePixelRatio, 2);
    set(this.room, room, shade);
    set(this.floor, room, shade);
    this.cutFace.color = paper;
    this.cutThin.color = ink;
  }

  clip(planes: Plane[]): void {
    for (const material of this.clipped) material.clippingPlanes = planes;
  }

  resized(width: number, height: number): void {
    this.size.set(width, height);
    for (const pen of this.pens) pen.resolution.copy(this.size);
  }

  dispose(): void {
    for (const material of Object.values(this)) if (material instanceof MeshBasicMaterial || material instanceof ShaderMaterial) material.dispose();
  }

  private pen(width: number, more: { dash?: number; gap?: number; opacity?: number; behind?: boolean; lift?: number } = {}): LineMaterial {
    const pen = new LineMaterial({ linewidth: width, worldUnits: false });
    if (more.dash) Object.assign(pen, { dashed: true, dashSize: more.dash, gapSize: more.gap });
    if (more.opacity) Object.assign(pen, { transparent: true, opacity: more.opacity });
    if (more.behind) Object.assign(pen, { depthTest: false, transparent: true });
    // strokes on a cut face lie in its plane: lifted a hair, or the face eats them
    if (more.lift) Object.assign(pen, { polygonOffset: true, polygonOffsetFactor: -2, polygonOffsetUnits: -more.lift });
    return pen;
  }
}

/** Parallel lines over a face: spacing and width in pixels of the page, slope 1 or -1. */
interface Hatch { spacing: number; width: number; slope: 1 | -1 }

/** Flat wash: upward faces stay paper, the others darken a little with the direction they face. No lights to burn battery. */
function wash(clipping: boolean, hatch?: Hatch): ShaderMaterial {
  return new ShaderMaterial({
    clipping,
    defines: hatch ? { HATCH: "" } : {},
    polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1,
    uniforms: {
      paper: { value: new Color() }, shade: { value: new Color() }, ink: { value: new Color() }, pixels: { value: 1 },
      hatch: { value: [hatch?.spacing ?? 1, hatch?.width ?? 0, hatch?.slope ?? 1] },
    },
    vertexShader: `
      #include <clipping_planes_pars_vertex>
      varying vec3 facing;
      void main() {
        facing = normal;
        vec4 mvPosition = modelViewMatrix * vec4(position, 1.0);
        gl_Position = projectionMatrix * mvPosition;
        #include <clipping_planes_vertex>
      }`,
    fragmentShader: `
      #include <clipping_planes_pars_fragment>
      uniform vec3 paper;
      uniform vec3 shade;
      uniform vec3 ink;
      uniform vec3 hatch;
      uniform float pixels;
      varying vec3 facing;
      void main() {
        #include <clipping_planes_fragment>
        float dark = 0.32 * abs(facing.y) + 0.62 * abs(facing.x) + 0.9 * max(-facing.z, 0.0);
        vec3 colour = mix(paper, shade, dark);
        #ifdef HATCH
          // lines of the sheet, not of the part: as dense from near as from afar
          float across = mod((gl_FragCoord.x - hatch.z * gl_FragCoord.y) / pixels * 0.7071, hatch.x);
          if (across < hatch.y) colour = mix(colour, ink, 0.8);
        #endif
        gl_FragColor = vec4(colour, 1.0);
        #include <colorspace_fragment>
      }`,
  });
}

/** Boards by how wet they are: the wetter, the closer the hatching and the stronger the wash; past the last threshold crossed; unknown is wide hatching the other way on bare paper. From behind only the hatching of what is wet is there, so that one looks into the van through it. */
function soaked(): ShaderMaterial {
  return new ShaderMaterial({
    clipping: true, side: DoubleSide,
    uniforms: { paper: { value: new Color() }, shade: { value: new Color() }, ink: { value: new Color() }, water: { value: new Color() }, pixels: { value: 1 }, bands: { value: 4 } },
    vertexShader: `
      #include <clipping_planes_pars_vertex>
      attribute float band;
      varying vec3 facing;
      varying float wet;
      void main() {
        facing = normal;
        wet = band;
        vec4 mvPosition = modelViewMatrix * vec4(position, 1.0);
        gl_Position = projectionMatrix * mvPosition;
        #include <clipping_planes_vertex>
      }`,
    fragmentShader: `
      #include <clipping_planes_pars_fragment>
      uniform vec3 paper;
      uniform vec3 shade;
      uniform vec3 ink;
      uniform vec3 water;
      uniform float pixels;
      uniform float bands;
      varying vec3 facing;
      varying float wet;
      float across(float slope, float spacing) { return mod((gl_FragCoord.x - slope * gl_FragCoord.y) / pixels * 0.7071, spacing); }
      void main() {
        #include <clipping_planes_fragment>
        float dark = 0.2 * abs(facing.y) + 0.3 * abs(facing.x) + 0.4 * max(-facing.z, 0.0);
        vec3 colour = mix(paper, shade, dark);
        float most = max(bands - 1.0, 1.0);
        if (!gl_FrontFacing) {
          float closer = mix(15.0, 6.0, wet / most);
          if (wet < 0.5 || (across(1.0, closer) > 1.6 && (wet < most - 0.5 || across(-1.0, closer) > 1.6))) discard;
          gl_FragColor = vec4(mix(water, ink, 0.25), 1.0);
          #include <colorspace_fragment>
          return;
        }
        if (wet < -0.5) {
          if (across(-1.0, 14.0) < 1.2) colour = mix(colour, ink, 0.55);
        } else if (wet > 0.5) {
          float share = wet / most;
          colour = mix(colour, water, 0.12 + 0.55 * share * share);
          if (across(1.0, mix(15.0, 6.0, share)) < 1.3) colour = mix(colour, ink, 0.75);
          if (wet > most - 0.5 && across(-1.0, 6.0) < 1.3) colour = mix(colour, ink, 0.75);
        }
        gl_FragColor = vec4(colour, 1.0);
        #include <colorspace_fragment>
      }`,
  });
}

function set(material: ShaderMaterial, paper: Color, shade: Color): void {
  (material.uniforms["paper"]!.value as Color).copy(paper);
  (material.uniforms["shade"]!.value as Color).copy(shade);
}

/** What the page sends to be drawn. Millimetres in the van's axes: x to the rear doors, y to the right wall, z up. */
export type Place = [number, number, number];

export interface Box { kind: "box"; at: Place; size: Place; yaw: number; tilt: number }
export interface Cylinder { kind: "cylinder"; at: Place; along: number; diameter: number; length: number; yaw: number; tilt: number }
export interface Prism { kind: "prism"; along: number; outline: Place[]; length: number; yaw: number; tilt: number }
export type Solid = Box | Cylinder | Prism;

export interface Part { id: string; name: string; system: string; solids: Solid[] }
export interface Line { id: string; medium: string; route: Place[] }
export interface Opening { name: string; face: "front" | "rear" | "left" | "right" | "roof"; from: number; width: number; sill: number; height: number; passable: boolean }
export interface Frame { kind: "rib" | "bow" | "pillar" | "rail" | "floorMember"; side: "left" | "right" | null; x: number; toX: number | null; z: number | null }
export interface Van {
  size: Place;
  taper: { fromZ: number; inAtRoof: number } | null;
  arches: { low: Place; high: Place }[];
  openings: Opening[];
  frames: Frame[];
  axles: number[];
}
export interface Tick { at: number; text: string }
export interface Drawing { van: Van; parts: Part[]; lines: Line[]; ticks: Tick[] }

/** A point of a way out: how far the load has shifted, and its quarter turns so far about the van's axes through its middle, in order; on a tilted way how it is turned in all, as a unit quaternion. */
export interface WayPoint { shift: Place; turns: number[]; turned: [number, number, number, number] | null }

/** One step of a way out: what has gone before, what moves now, by which way; where fixings are undone; what it is about. What is folded first goes as a box of that size, its low corner along the way. */
export interface Move { gone: string[]; moving: string[]; path: WayPoint[]; folded: Place | null; fixings: Place[]; about: string[] }

/** How a part stands against what it shall hold. */
export type Verdict = "short" | "unknown" | "holds";

/** A part as judged; the words stand beside it where there is room for them. */
export interface JudgedPart { id: string; verdict: Verdict; text: string | null }

/** A van as judged: every part, and the push that breaks the one asked about, with the fixings that go first. */
export interface Judged { parts: JudgedPart[]; push: { at: Place; along: Place; text: string } | null; fixings: Place[] }

/** Boards by how wet they are: pieces as low and high corner, the axis through each, the board each is of; which boards line the van; how many bands there are; readings and next places as words at a place. */
export interface Damp { boxes: number[]; across: number[]; sheet: number[]; boards: string[]; shell: boolean[]; bands: number; pins: { key: string; at: Place; text: string; look: string }[] }

export const axes = ["x", "y", "z"] as const;
export type AxisName = (typeof axes)[number];

import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DoubleSide,
  Group,
  type Material,
  Mesh,
  MeshLambertMaterial,
  MeshPhongMaterial,
  type Object3D,
} from "three";
import { cardColour } from "../../core/window/card.ts";
import { setOutlines } from "../../core/window/motif.ts";
import type { PartKind } from "../../core/window/part.ts";
import type { RoundData, RoundInsert, RoundPart } from "../../output/data/round-data.ts";
import { fanAt, type PanelPlace, panelIn } from "./pose.ts";
import { bendFlat, besideHinge, type FlatMesh, flatMesh } from "./window-mesh.ts";

/** The window on the front tips: the base frame stays, door, glazing and motifs swing round the hinge. */
export interface WindowModel {
  readonly object: Object3D;
  readonly open: (opening: number) => void;
  readonly openDoor: (angle: number) => void;
  readonly show: (on: boolean) => void;
  readonly showMotifs: (on: boolean) => void;
}

/** How the parts lie on each other in front of the tips, mm from back to front. */
const BASE = [0.1, 0.7] as const;
const GLAZING = [0.9, 0.9] as const;
/** A motif that lies flat, a little prouder than the door where it reaches over it; each spacer lifts it by so much more. */
const MOTIF = [1, 1.8] as const;
const SPACER = 2;
const DOOR = [1, 1.7] as const;

/** The base frame in the shade of the door. */
const UNDER = 0.6;

interface Pane {
  readonly mesh: Mesh;
  readonly flat: FlatMesh;
  readonly swings: boolean;
}

export function modelWindow(data: RoundData, insert: RoundInsert): WindowModel {
  const partOf = (kind: PartKind): RoundPart | undefined => insert.parts.find((part) => part.kind === kind);
  const outlinesOf = (kind: PartKind): RoundPart["outlines"] => partOf(kind)?.outlines ?? [];
  const hinge = partOf("door")?.scores[0]?.[0]?.[0] ?? 0;
  const ofDoor = cardColour(partOf("door")?.card, "door");
  const card = new MeshLambertMaterial({ color: ofDoor, side: DoubleSide });
  const under = new MeshLambertMaterial({ color: new Color(ofDoor).multiplyScalar(UNDER), side: DoubleSide });
  const clear = new MeshPhongMaterial({
    color: 0xdcecf0,
    specular: 0xffffff,
    shininess: 60,
    transparent: true,
    opacity: 0.16,
    side: DoubleSide,
    depthWrite: false,
  });
  const motifs = insert.parts.flatMap(motifPane);
  const door = flatMesh(besideHinge(outlinesOf("door"), hinge, insert.hinge), ...DOOR);
  const panes = [
    pane(flatMesh(outlinesOf("base-frame"), ...BASE), under, false),
    pane(flatMesh(outlinesOf("glazing"), ...GLAZING), clear, true),
    pane(door, card, true),
    ...motifs,
  ];
  const swinging = new Group();
  const object = new Group();
  object.add(swinging);
  for (const one of panes) {
    one.mesh.castShadow = one.mesh.material !== clear;
    one.mesh.receiveShadow = one.mesh.material !== clear;
    (one.swings ? swinging : object).add(one.mesh);
  }
  return {
    object,
    open: (opening) => {
      const panel = panelIn(data, fanAt(data, opening), insert.panel);
      const pivot = hingePlace(panel(hinge));
      swinging.position.set(pivot.x, 0, pivot.z);
      for (const one of panes) bend(one, panel, data.book.leafHeight, one.swings ? pivot : { x: 0, z: 0 });
    },
    openDoor: (angle) => {
      swinging.rotation.y = insert.hinge === "left" ? -angle : angle;
    },
    show: (on) => {
      object.visible = on;
    },
    showMotifs: (on) => {
      for (const { mesh } of motifs) mesh.visible = on;
    },
  };
}

/** A motif that is set on the window; none for any other part. */
function motifPane({ outlines, seat, spacers = 0, card }: RoundPart): Pane[] {
  if (!seat) return [];
  const material = new MeshLambertMaterial({ color: cardColour(card, "motif"), side: DoubleSide });
  const [back, front] = MOTIF.map((z) => z + spacers * SPACER) as [number, number];
  return [pane(flatMesh(setOutlines({ outlines, seat }), back, front), material, true)];
}

function pane(flat: FlatMesh, material: Material, swings: boolean): Pane {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(flat.vertices.length), 3));
  const mesh = new Mesh(geometry, material);
  mesh.frustumCulled = false;
  return { mesh, flat, swings };
}

function bend(
  { mesh, flat }: Pane,
  panel: (x: number) => PanelPlace,
  leafHeight: number,
  pivot: { readonly x: number; readonly z: number },
): void {
  const position = mesh.geometry.getAttribute("position") as BufferAttribute;
  bendFlat(flat, panel, leafHeight, pivot, position.array as Float32Array);
  position.needsUpdate = true;
  mesh.geometry.computeVertexNormals();
}

/** The door turns round the score line on its card's front. */
function hingePlace(place: PanelPlace): { x: number; z: number } {
  return { x: place.x + DOOR[0] * place.outX, z: place.z + DOOR[0] * place.outZ };
}

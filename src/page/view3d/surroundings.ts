import {
  BufferAttribute,
  CircleGeometry,
  DirectionalLight,
  Group,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  Object3D,
  ShadowMaterial,
} from "three";
import type { RoundData } from "../../output/data/round-data.ts";

/** The surroundings: soft light from above, one lamp at the upper left, and a turntable that catches shadows. */
export interface Surroundings {
  readonly object: Object3D;
  /** What stands on the turntable, in the fan's own axes. */
  readonly table: Group;
  /** Turns the table so that a viewer in front of it sees the book from this angle, radians. */
  readonly turn: (angle: number) => void;
  /** Evening, so that the book's own light is seen. */
  readonly dim: (on: boolean) => void;
}

const DAY = { sky: 2.3, lamp: 2.1 };
const EVENING = { sky: 0.5, lamp: 0.32 };
const SHADOW_PIXELS = 2048;

export function makeSurroundings(book: RoundData["book"]): Surroundings {
  const reach = Math.hypot(book.leafWidth + book.square, book.leafHeight / 2 + book.square);
  const sky = new HemisphereLight(0xfffaf0, 0x9c8468, DAY.sky);
  const lamp = new DirectionalLight(0xfff4e2, DAY.lamp);
  lamp.position.set(-0.62 * reach, 1.05 * reach, 1.9 * reach);
  lamp.castShadow = true;
  lamp.shadow.mapSize.set(SHADOW_PIXELS, SHADOW_PIXELS);
  lamp.shadow.radius = 3;
  lamp.shadow.bias = -0.0015;
  Object.assign(lamp.shadow.camera, {
    left: -reach,
    right: reach,
    top: reach,
    bottom: -reach,
    near: 0.2 * reach,
    far: 4.5 * reach,
  });
  const axis = new Group();
  const table = new Group();
  table.position.z = -book.leafWidth / 2;
  axis.add(table);
  const floor = -book.leafHeight / 2 - book.square;
  const object = new Object3D();
  object.add(sky, lamp, axis, ...ground(floor, reach));
  return {
    object,
    table,
    turn: (angle) => {
      axis.rotation.y = -angle;
    },
    dim: (on) => {
      const level = on ? EVENING : DAY;
      sky.intensity = level.sky;
      lamp.intensity = level.lamp;
    },
  };
}

/** Nothing but shadow: the page's own surface is the table. */
function ground(floor: number, reach: number): Mesh[] {
  const shade = new CircleGeometry(1.05 * reach, 64);
  const points = shade.getAttribute("position");
  const colours = new Float32Array(4 * points.count);
  for (let i = 0; i < points.count; i += 1) colours.set([0.1, 0.06, 0.02, i === 0 ? 0.34 : 0], 4 * i);
  shade.setAttribute("color", new BufferAttribute(colours, 4));
  const soft = new Mesh(shade, new MeshBasicMaterial({ vertexColors: true, transparent: true, depthWrite: false }));
  const cast = new Mesh(new CircleGeometry(2.5 * reach, 48), new ShadowMaterial({ opacity: 0.16, depthWrite: false }));
  cast.receiveShadow = true;
  for (const [i, mesh] of [soft, cast].entries()) {
    mesh.rotation.x = -Math.PI / 2;
    mesh.position.y = floor - 0.2 + 0.1 * i;
    mesh.renderOrder = i - 2;
  }
  return [soft, cast];
}

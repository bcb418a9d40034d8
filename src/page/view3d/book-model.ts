import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DoubleSide,
  DynamicDrawUsage,
  Group,
  Mesh,
  MeshLambertMaterial,
  type Object3D,
} from "three";
import type { RoundData } from "../../output/data/round-data.ts";
import { clothOf } from "../../output/drawing/front/boards.ts";
import { insideTone } from "../../output/drawing/front/tone.ts";
import { boardMesh, coreMesh } from "./board-mesh.ts";
import { leafMesh, poseLeaves } from "./leaf-mesh.ts";
import { colourLeaves } from "./level-colours.ts";
import { fanAt } from "./pose.ts";

/** Boards, leaves and the dark between them; three draw calls. */
export interface BookModel {
  readonly object: Object3D;
  readonly open: (opening: number) => void;
  readonly colourLevels: (on: boolean) => void;
}

/**
 * A leaf that the viewer sees on edge has all its depth within a hair's breadth, where a graphics card's depth is no longer
 * exact and the leaf would shine through what stands before it; so faces are drawn as much further back as their depth changes over this many pixels.
 */
const STEEP = 1;

export function makeBook(data: RoundData): BookModel {
  const sheets = leafMesh(data);
  const positions = new Float32Array(3 * sheets.leaf.length);
  const normals = new Float32Array(3 * sheets.leaf.length);
  const leaves = new BufferGeometry();
  leaves.setIndex(new BufferAttribute(sheets.index, 1));
  leaves.setAttribute("position", new BufferAttribute(positions, 3).setUsage(DynamicDrawUsage));
  leaves.setAttribute("normal", new BufferAttribute(normals, 3).setUsage(DynamicDrawUsage));
  const paper = new Mesh(
    leaves,
    new MeshLambertMaterial({ vertexColors: true, polygonOffset: true, polygonOffsetFactor: STEEP }),
  );
  const boards = new BufferGeometry();
  const cloth = new Mesh(
    boards,
    new MeshLambertMaterial({ color: new Color(`rgb(${clothOf(data.kit).join()})`), side: DoubleSide }),
  );
  const core = new BufferGeometry();
  const dark = new Mesh(core, new MeshLambertMaterial({ color: insideTone(0.5, 0.8), side: DoubleSide }));
  const object = new Group();
  for (const mesh of [paper, cloth, dark]) {
    mesh.castShadow = true;
    mesh.receiveShadow = true;
    mesh.frustumCulled = false;
    object.add(mesh);
  }
  const colourLevels = (on: boolean): void => {
    leaves.setAttribute("color", new BufferAttribute(colourLeaves(sheets, data, on), 3));
  };
  colourLevels(false);
  return {
    object,
    colourLevels,
    open: (opening) => {
      const fan = fanAt(data, opening);
      poseLeaves(sheets, fan, data.book.leafHeight, { positions, normals });
      for (const name of ["position", "normal"]) leaves.getAttribute(name).needsUpdate = true;
      reshape(boards, boardMesh(data, fan));
      reshape(core, coreMesh(data, fan));
    },
  };
}

function reshape(geometry: BufferGeometry, triangles: Float32Array): void {
  const position = geometry.getAttribute("position");
  if (position) position.array.set(triangles);
  else geometry.setAttribute("position", new BufferAttribute(triangles, 3));
  geometry.getAttribute("position").needsUpdate = true;
  geometry.computeVertexNormals();
}

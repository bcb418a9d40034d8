import { Mesh, type Object3D, Sprite } from "three";

/** Gives back what the graphics memory holds of an object and everything below it. */
export function release(object: Object3D): void {
  object.traverse((one) => {
    if (!(one instanceof Mesh || one instanceof Sprite)) return;
    one.geometry.dispose();
    for (const material of [one.material].flat()) {
      material.map?.dispose();
      material.dispose();
    }
  });
}

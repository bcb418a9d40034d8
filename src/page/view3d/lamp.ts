import {
  AdditiveBlending,
  CylinderGeometry,
  DataTexture,
  Group,
  LinearFilter,
  Mesh,
  MeshStandardMaterial,
  type Object3D,
  PointLight,
  Sprite,
  SpriteMaterial,
} from "three";
import type { RoundLight } from "../../output/data/round-data.ts";

export interface Lamp {
  readonly object: Object3D;
  readonly light: (on: boolean) => void;
}

const WARM = 0xffb45a;
/** Brightness as three counts it (candela over mm²): paper 50 mm off is then lit fully. */
const POWER = 11000;
/** Its light reaches this far, mm: beyond, paper would hold it back. */
const REACH = 74;

/** The light in its pocket: an upright cylinder that glows when it is on. */
export function makeLamp(light: RoundLight, leafHeight: number): Lamp {
  const { diameter, height, floor, centre } = light;
  const body = new MeshStandardMaterial({ color: 0xf3ead8, roughness: 0.55, emissive: WARM, emissiveIntensity: 0 });
  const cylinder = new Mesh(new CylinderGeometry(diameter / 2, diameter / 2, height, 48), body);
  cylinder.castShadow = true;
  const point = new PointLight(WARM, 0, REACH, 2);
  point.position.y = height * 0.1;
  const glow = new SpriteMaterial({
    map: halo(),
    color: WARM,
    blending: AdditiveBlending,
    depthWrite: false,
    transparent: true,
    opacity: 0.85,
  });
  const sprite = new Sprite(glow);
  sprite.scale.setScalar(Math.max(diameter, height) * 3.2);
  sprite.visible = false;
  const object = new Group();
  object.position.set(centre.x, leafHeight / 2 - floor + height / 2, centre.z);
  object.add(cylinder, point, sprite);
  return {
    object,
    light: (on) => {
      body.emissiveIntensity = on ? 1.5 : 0;
      point.intensity = on ? POWER : 0;
      sprite.visible = on;
    },
  };
}

/** A round glow that fades to its rim. */
function halo(): DataTexture {
  const size = 64;
  const pixels = new Uint8Array(4 * size * size);
  for (let i = 0; i < size * size; i += 1) {
    const x = ((i % size) + 0.5) / size - 0.5;
    const y = (Math.floor(i / size) + 0.5) / size - 0.5;
    const fade = Math.max(0, 1 - 2 * Math.hypot(x, y)) ** 2;
    pixels.set([255, 255, 255, Math.round(255 * fade)], 4 * i);
  }
  const texture = new DataTexture(pixels, size, size);
  texture.magFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}

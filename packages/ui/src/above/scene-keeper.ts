import { layScene } from "../kernels/above/lay-scene.js";
import type { Scene, SceneRequest } from "../kernels/above/scene.js";

/** Keeps the last scene, and lays it out anew only when something that it shows has changed. */
export class SceneKeeper {
  #request: SceneRequest | undefined;
  #scene: Scene | undefined;

  sceneOf(request: SceneRequest): Scene {
    if (this.#scene === undefined || !isSame(this.#request, request)) {
      this.#scene = layScene(request);
      this.#request = request;
    }
    return this.#scene;
  }
}

function isSame(one: SceneRequest | undefined, other: SceneRequest): boolean {
  if (one === undefined) return false;
  return (Object.keys(other) as (keyof SceneRequest)[]).every((key) => one[key] === other[key]);
}

import { dropHandles } from "./drop-handles.js";
import { groundHandles } from "./ground-handles.js";
import type { HandlesRequest } from "./handles-request.js";
import { jointHandles } from "./joint-handles.js";
import { readingHandles } from "./reading-handles.js";
import type { SideHandle } from "./side-handle.js";
import { sourceHandles } from "./source-handles.js";

/**
 * Everything of the drawn path that can be moved up and down. A plan that has already gone on from what was checked
 * only loses the handles that no longer fit it.
 */
export function handlesOf(request: HandlesRequest): SideHandle[] {
  if (request.checked.line.sources[request.path.source] === undefined) return [];
  return [
    ...sourceHandles(request),
    ...jointHandles(request),
    ...groundHandles(request),
    ...dropHandles(request),
    ...readingHandles(request),
  ];
}

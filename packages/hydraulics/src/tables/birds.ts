import type { BirdKind, BirdRow, CitationRow, IntakePoint, IntakeRow } from "./bird-types.js";
import { birdCitations, birds } from "./birds.generated.js";
import type { Citation } from "./citation.js";

export type { BirdKind, IntakePoint } from "./bird-types.js";

/** Air temperature the figures of intake are for [°C]. */
const REFERENCE_TEMPERATURE = 21;

/** Every kind, by id. */
export const allBirds: readonly BirdKind[] = birds.map(kindOf);

const byId = new Map(allBirds.map((kind) => [kind.id, kind]));

/** The kind with this id, such as "hen". */
export function birdById(id: string): BirdKind | undefined {
  return byId.get(id);
}

function kindOf(row: BirdRow): BirdKind {
  return {
    ...row,
    size: row.size.map(intakeOf),
    expect: row.expect.map(intakeOf),
    referenceTemperature: REFERENCE_TEMPERATURE,
  };
}

function intakeOf([ageDays, lay, intake, confidence, cited]: IntakeRow): IntakePoint {
  return {
    ageDays,
    lay: lay < 0 ? undefined : lay,
    intake,
    confidence: confidence as IntakePoint["confidence"],
    citation: citationAt(cited),
  };
}

function citationAt(index: number): Citation {
  const [source, where, seen] = birdCitations[index] as CitationRow;
  return { source, where, seen } as Citation;
}

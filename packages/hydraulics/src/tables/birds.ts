import type { BirdKind, BirdRow, CitationRow, IntakePoint, IntakeRow } from "./bird-types.js";
import { birdCitations, birds } from "./birds.generated.js";
import type { Citation } from "./citation.js";

export type { BirdKind, IntakePoint } from "./bird-types.js";

/** Air temperature the figures of intake are for [°C]. */
const REFERENCE_TEMPERATURE = 21;

const ML = 1e-6;
/** Twelve figures, so that 38 mL is 0.000038 and not its neighbour. */
const metric = (value: number): number => Number(value.toPrecision(12));
const perSecond = (flowMlMin: number): number => metric((flowMlMin * ML) / 60);

const CONFIDENCE: Readonly<Record<string, IntakePoint["confidence"]>> = { h: "high", m: "medium", l: "low" };

/** Every kind, by id. */
export const allBirds: readonly BirdKind[] = birds.map(kindOf);

const byId = new Map(allBirds.map((kind) => [kind.id, kind]));

/**
 * The kind with this id, such as "hen".
 *
 * @example birdById("pullet").species   // "chicken"
 */
export function birdById(id: string): BirdKind | undefined {
  return byId.get(id);
}

function kindOf(row: BirdRow): BirdKind {
  const { atHatching, perWeek, most } = row.flowNeed;
  return {
    ...row,
    fastest: perSecond(row.fastest),
    flowNeed: { atHatching: perSecond(atHatching), perWeek: perSecond(perWeek), most: perSecond(most) },
    size: row.size.map(intakeOf),
    expect: row.expect.map(intakeOf),
    referenceTemperature: REFERENCE_TEMPERATURE,
  };
}

function intakeOf([ageDays, lay, intake, confidence, cited]: IntakeRow): IntakePoint {
  return {
    ageDays,
    lay: lay < 0 ? undefined : lay,
    intake: metric(intake * ML),
    confidence: CONFIDENCE[confidence],
    citation: citationAt(cited),
  };
}

function citationAt(index: number): Citation {
  const [source, where, seen] = birdCitations[index] as CitationRow;
  return { source, where, seen } as Citation;
}

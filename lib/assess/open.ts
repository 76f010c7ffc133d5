// Opening a stored assessment: what earlier methods did not keep is filled in from what they kept, so that everything
// that reads assessments meets one shape. Stored bytes and their hash stay as they were.
import { z } from 'zod';
import type { Assessment, Check, CheckOrigins, Curve, Figure, Step } from './assessment';

/** An assessment of any method so far. */
interface Stored extends Omit<Assessment, 'figures' | 'checks' | 'curves'> {
  readonly figures: readonly (Omit<Figure, 'origin'> & Partial<Pick<Figure, 'origin'>>)[];
  readonly checks: readonly (Omit<Check, 'origins'> & Partial<Pick<Check, 'origins'>>)[];
  readonly curves: readonly (Omit<Curve, 'inputs'> & Partial<Pick<Curve, 'inputs'>>)[];
}

/** Enough of the shape to tell an assessment from something else; its hash vouches for the rest. */
const outline = z.looseObject({
  method: z.string(),
  headline: z.looseObject({ demanded: z.number() }),
  figures: z.array(z.looseObject({ key: z.string(), step: z.string().nullable() })),
  checks: z.array(z.looseObject({ key: z.string(), steps: z.array(z.string()) })),
  findings: z.array(z.unknown()),
  curves: z.array(z.looseObject({ key: z.string(), marks: z.array(z.unknown()) })),
  sheet: z.array(z.unknown()),
});

/**
 * @param stored what an `assess` of this or an earlier method gave, as JSON
 * @throws {Error} what is no assessment
 */
export function openAssessment(stored: unknown): Assessment {
  outline.parse(stored);
  // Written from an assessment and append-only since; its outline was checked just now.
  const kept = stored as Stored;
  const known = new Map(kept.sheet.map((s) => [s.key, s]));
  return {
    ...kept,
    figures: kept.figures.map((f) => ({ ...f, origin: f.origin ?? fromStep(f.step) })),
    checks: kept.checks.map((c) => ({ ...c, origins: c.origins ?? originsBySteps(c, known) })),
    curves: kept.curves.map((c) => ({ ...c, inputs: c.inputs ?? [] })),
  };
}

function fromStep(step: string | null): string | null {
  return step === null ? null : `step:${step}`;
}

/** Method 1.0 kept the steps of a check, not which number each of them gave: its value tells. */
function originsBySteps(
  check: Pick<Check, 'demand' | 'capacity' | 'steps'>,
  known: ReadonlyMap<string, Step>,
): CheckOrigins {
  const gave = (value: number | null) =>
    fromStep(check.steps.find((key) => value !== null && known.get(key)?.value === value) ?? null);
  return { demand: gave(check.demand), capacity: gave(check.capacity), torque: null };
}

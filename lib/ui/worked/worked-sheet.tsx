// The worked sheet: every step of an assessment, grouped by the part it was worked for.
import type { Step } from '@/lib/assess/assessment';
import type { AnyFormula } from '@/lib/calc/formula';
import type { WorkedLinks } from './step-origin';
import { WorkedStep } from './worked-step';

interface WorkedSheetProps {
  readonly steps: readonly Step[];
  /** Steps of the whole assessment, where `steps` are some of them: inputs may come from any. */
  readonly all?: readonly Step[] | undefined;
  /** Formulas of the library by key. */
  readonly formulas: ReadonlyMap<string, AnyFormula>;
  /** Words for the path of a part, e.g. `Stage 3, pinion`. */
  readonly partLabel: (path: string) => string;
  /** Fields and catalogue rows; steps find one another by themselves. */
  readonly links: Pick<WorkedLinks, 'field' | 'catalog'>;
  readonly formulaHref?: ((key: string) => string) | undefined;
}

/** All steps given, in their order, under a heading a part. */
export function WorkedSheet({
  steps,
  all = steps,
  formulas,
  partLabel,
  links,
  formulaHref,
}: WorkedSheetProps) {
  if (steps.length === 0) return <p className="hush">Nothing was worked here.</p>;
  const names = new Map(all.map((s) => [s.key, formulas.get(s.formula)?.name ?? s.formula]));
  const origins: WorkedLinks = { ...links, step: (key) => names.get(key) ?? null };
  return (
    <>
      {byPart(steps).map((group) => (
        // A sheet has hundreds of steps: a part opens by itself when a link leads to one of its steps.
        <details className="step-group fold" key={group.at}>
          <summary>
            <h3>{partLabel(group.at)}</h3>{' '}
            <span className="hush">
              {group.steps.length === 1 ? '1 step' : `${group.steps.length} steps`}
            </span>
          </summary>
          {group.steps.map((step) => (
            <WorkedStep
              key={step.key}
              step={step}
              formula={formulas.get(step.formula)}
              links={origins}
              formulaHref={formulaHref}
            />
          ))}
        </details>
      ))}
    </>
  );
}

function byPart(steps: readonly Step[]): { readonly at: string; readonly steps: readonly Step[] }[] {
  const groups = new Map<string, Step[]>();
  for (const step of steps) groups.set(step.at, [...(groups.get(step.at) ?? []), step]);
  return [...groups].map(([at, group]) => ({ at, steps: group }));
}

'use client';
// Where the margin stands below the form: what it comes to in one line at the foot of the screen, and the way there.
import type { Assessment } from '@/lib/assess/assessment';
import { printFactor } from '@/lib/ui/marks/factor';
import { printTorque } from '@/lib/ui/marks/torque';

export function PreviewLine({ assessment }: { readonly assessment: Assessment }) {
  const { holdsTo, factor, required } = assessment.headline;
  const critical = assessment.findings.filter((f) => f.class === 'critical').length;
  const below = factor !== null && required !== null && factor < required;
  return (
    <div className="preview-line">
      {holdsTo === null || factor === null || required === null ? (
        <span>Weakest link not assessed</span>
      ) : (
        <span>
          Weakest link <b>{printTorque(holdsTo)}</b>
          <span className="unit">{'\u202f'}N·m</span>, factor{' '}
          <b className={below ? 'warn' : undefined}>{printFactor(factor)}</b> of {printFactor(required)}
        </span>
      )}
      <a href="#preview" className={critical === 0 ? undefined : 'warn'}>
        {critical === 0 ? 'What holds' : `${critical} critical`}
      </a>
    </div>
  );
}

// Deciding about a finding or a check that falls short: what is decided and why, kept for good.
import { TextForm } from '@/app/_parts/text-form';
import type { SheetView } from '@/lib/service/views/sheet';
import { dispose } from '../actions';

interface DecideFormProps {
  readonly sheet: SheetView;
  readonly findingKey: string;
  readonly fingerprint: string;
  /** What it is about, for those who hear the page. */
  readonly about: string;
}

const decisions = {
  accepted: 'Accepted as it is',
  notApplicable: 'Does not apply here',
  reworked: 'Reworked outside the document',
};

export function DecideForm({ sheet, findingKey, fingerprint, about }: DecideFormProps) {
  return (
    <details>
      <summary>
        Decide<span className="for-ear"> about: {about}</span>
      </summary>
      <TextForm
        action={dispose}
        hidden={{ design: sheet.design.number, letter: sheet.revision.letter, findingKey, fingerprint }}
        failed="Not decided."
        submit="Decide"
        inputs={[
          { kind: 'choice', name: 'kind', label: 'Decision', options: decisions },
          {
            kind: 'line',
            name: 'reason',
            label: 'Reason',
            max: 2000,
            help: 'At least a sentence; it is kept for good.',
          },
        ]}
      />
    </details>
  );
}

// Publishing the draft as the next revision.
import { TextForm } from '@/app/_parts/text-form';
import { publishDraft } from '../actions';

export function PublishForm({ design, letter }: { readonly design: string; readonly letter: string }) {
  return (
    <TextForm
      action={publishDraft}
      hidden={{ design }}
      failed="Not published."
      submit={`Publish revision ${letter}`}
      kind="main"
      inputs={[
        {
          kind: 'block',
          name: 'changeNote',
          label: 'Change note',
          rows: 3,
          max: 2000,
          help: 'What changed and why. A revision is never changed afterwards; it starts unsigned.',
        },
      ]}
    />
  );
}

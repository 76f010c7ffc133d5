// Publishing the draft as the next revision.
import { TextForm } from '@/app/_parts/text-form';
import { publishDraft } from '../actions';

interface PublishFormProps {
  readonly design: string;
  readonly letter: string;
  /** Version of the draft that the page shows. */
  readonly version: number;
}

export function PublishForm({ design, letter, version }: PublishFormProps) {
  return (
    <TextForm
      action={publishDraft}
      hidden={{ design, baseVersion: String(version) }}
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

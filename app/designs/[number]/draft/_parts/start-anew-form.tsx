// Giving the draft up for the latest revision.
import { TextForm } from '@/app/_parts/text-form';
import { startAnew } from '../actions';

interface StartAnewFormProps {
  readonly design: string;
  readonly letter: string;
  readonly version: number;
}

export function StartAnewForm({ design, letter, version }: StartAnewFormProps) {
  return (
    <details>
      <summary>Give this draft up</summary>
      <TextForm
        action={startAnew}
        hidden={{ design, letter, baseVersion: String(version) }}
        failed="Not given up."
        submit={`Start anew from revision ${letter}`}
        kind="warning"
        inputs={[]}
      >
        <p className="hush">
          What was changed since revision {letter} is lost from the draft; the ledger keeps that it happened.
        </p>
      </TextForm>
    </details>
  );
}

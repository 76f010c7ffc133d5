// Taking a signature back, with a reason that stays on record.
import { TextForm } from '@/app/_parts/text-form';
import { withdraw } from '../actions';

export function WithdrawForm({ signOffId }: { readonly signOffId: string }) {
  return (
    <details>
      <summary>Withdraw this signature</summary>
      <TextForm
        action={withdraw}
        hidden={{ signOffId }}
        failed="Not withdrawn."
        submit="Withdraw the signature"
        kind="warning"
        inputs={[
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

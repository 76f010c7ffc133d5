// A signature as the component shows it.
import type { HoldPointView, SignatureView } from '@/lib/service/views/signing';
import { Signature } from '@/lib/ui/signing/signature';

interface SignatureShownProps {
  readonly signature: SignatureView;
  readonly point: HoldPointView;
}

export function SignatureShown({ signature: s, point }: SignatureShownProps) {
  return (
    <Signature
      signer={s.signer.name}
      role={s.roleThenLabel.toLowerCase()}
      meaning={`Releases ${point.label.toLowerCase()}`}
      statement={s.meaning}
      at={s.at}
      hash={s.documentHash}
      voided={s.withdrawn === null ? null : `withdrawn by ${s.withdrawn.by.name}: ${s.withdrawn.reason}`}
    />
  );
}

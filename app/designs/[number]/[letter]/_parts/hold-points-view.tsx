// The hold points of a revision: where each stands, what blocks it and who can remove that, who signed.
import { addresses } from '@/app/_parts/addresses';
import type { SheetView } from '@/lib/service/views/sheet';
import type { HoldPointView, SignatureView } from '@/lib/service/views/signing';
import { LinkButton } from '@/lib/ui/forms/button';
import { View } from '@/lib/ui/sheet/view';
import { HoldPoints, type HoldState } from '@/lib/ui/signing/hold-points';
import { BlockerList, blockerSummary } from './blocker-list';
import { SignatureShown } from './signature-shown';

const states: Readonly<Record<HoldPointView['state'], HoldState>> = {
  released: 'passed',
  open: 'open',
  blocked: 'held',
  withdrawn: 'held',
  suspended: 'held',
};

export function HoldPointsView({ sheet }: { readonly sheet: SheetView }) {
  return (
    <View letter="B" title="Hold points" id="hold-points">
      <HoldPoints points={sheet.holdPoints.map((p) => pointOf(p, sheet))} />
      {sheet.holdPoints.map((p) => (
        <BlockerList key={p.key} point={p} sheet={sheet} />
      ))}
      {sheet.holdPoints.flatMap((point) =>
        point.signatures.map((s) => <Signed key={s.signOffId} signature={s} point={point} sheet={sheet} />),
      )}
    </View>
  );
}

interface SignedProps {
  readonly signature: SignatureView;
  readonly point: HoldPointView;
  readonly sheet: SheetView;
}

function Signed({ signature, point, sheet }: SignedProps) {
  const { design, revision } = sheet;
  return (
    <>
      <SignatureShown signature={signature} point={point} />
      {signature.mayWithdraw ? (
        <a href={addresses.withdraw(design.number, revision.letter, signature.signOffId)}>
          Withdraw this signature
        </a>
      ) : null}
    </>
  );
}

function pointOf(p: HoldPointView, sheet: SheetView) {
  const standing = p.signatures.filter((s) => s.withdrawn === null);
  const detail =
    standing.length > 0
      ? `signed by ${standing.map((s) => s.signer.name).join(' and ')}`
      : (p.needed.find((n) => !n.met)?.who ?? p.releases);
  return {
    key: p.key,
    name: p.label,
    state: states[p.state],
    detail: standing.length > 0 ? detail : `needs ${lower(detail)}`,
    blockers: blockerSummary(p.blockers),
    action: p.maySign ? (
      <LinkButton href={addresses.sign(sheet.design.number, sheet.revision.letter, p.key)} kind="main">
        Sign off {p.label.toLowerCase()}
      </LinkButton>
    ) : p.whyNot === null ? undefined : (
      <span className="hush">{p.whyNot}</span>
    ),
  };
}

function lower(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

// The hold points of a revision: where each stands, what blocks it and who can remove that, who signed.
import { addresses } from '@/app/_parts/addresses';
import type { SheetView } from '@/lib/service/views/sheet';
import type { HoldPointView, SignatureView } from '@/lib/service/views/signing';
import { LinkButton } from '@/lib/ui/forms/button';
import { View } from '@/lib/ui/sheet/view';
import { HoldPoints, type HoldState } from '@/lib/ui/signing/hold-points';
import { Signature } from '@/lib/ui/signing/signature';
import { BlockerList, blockerSummary } from './blocker-list';
import { WithdrawForm } from './withdraw-form';

const states: Readonly<Record<HoldPointView['state'], HoldState>> = {
  released: 'passed',
  open: 'open',
  blocked: 'held',
  withdrawn: 'held',
  suspended: 'held',
};

export function HoldPointsView({ sheet }: { readonly sheet: SheetView }) {
  const signatures = sheet.holdPoints.flatMap((p) => p.signatures);
  return (
    <View letter="B" title="Hold points" id="hold-points">
      <HoldPoints points={sheet.holdPoints.map((p) => pointOf(p, sheet))} />
      {sheet.holdPoints.map((p) => (
        <BlockerList key={p.key} point={p} sheet={sheet} />
      ))}
      {signatures.map((s) => (
        <Signed key={s.signOffId} signature={s} sheet={sheet} />
      ))}
    </View>
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

function Signed({ signature: s, sheet }: { readonly signature: SignatureView; readonly sheet: SheetView }) {
  const point = sheet.holdPoints.find((p) => p.key === s.holdPoint);
  return (
    <>
      <Signature
        signer={s.signer.name}
        role={s.roleThenLabel.toLowerCase()}
        meaning={`Releases ${point?.label.toLowerCase() ?? s.holdPoint}`}
        statement={s.meaning}
        at={s.at}
        hash={s.documentHash}
        voided={s.withdrawn === null ? null : `withdrawn by ${s.withdrawn.by.name}: ${s.withdrawn.reason}`}
      />
      {s.mayWithdraw ? <WithdrawForm signOffId={s.signOffId} /> : null}
    </>
  );
}

// Joining a club by an invitation.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { type FormInput, TextForm } from '@/app/_parts/text-form';
import { tell } from '@/lib/service/failures';
import { invitationByToken } from '@/lib/service/members/join';
import { addressOf } from '@/lib/service/sign-in/page-session';
import type { InvitationOffer } from '@/lib/service/views/members';
import { Moment } from '@/lib/ui/marks/time';
import { Failure } from '@/lib/ui/notices/notice';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { joinClub } from './actions';

export const metadata: Metadata = { title: 'Join', referrer: 'no-referrer' };

export default async function JoinPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const offer = await invitationByToken({ token, address: await addressOf() });
  return (
    <PageFrame>
      <Sheet
        title={<PlainTitle over="Invitation" title={offer.ok ? offer.value.clubName : 'Cannot be used'} />}
      >
        {offer.ok ? (
          <Offer offer={offer.value} token={token} />
        ) : (
          <>
            <Failure title="Not joined.">{tell(offer.error).sentence}</Failure>
            <p>
              Ask the club’s steward for another, or <Link href={addresses.signIn}>sign in</Link> if you have
              joined already.
            </p>
          </>
        )}
      </Sheet>
    </PageFrame>
  );
}

function Offer({ offer, token }: { readonly offer: InvitationOffer; readonly token: string }) {
  return (
    <View letter="A" title="Join the club">
      <p>
        This invitation is for <strong>{offer.email}</strong>, as {offer.roleLabel.toLowerCase()}. It can be
        used once, until <Moment at={offer.expiresAt} />.
      </p>
      <TextForm
        action={joinClub}
        hidden={{ token }}
        failed="Not joined."
        submit="Join"
        kind="main"
        inputs={inputsFor(offer)}
      />
    </View>
  );
}

function inputsFor(offer: InvitationOffer): FormInput[] {
  if (offer.known) {
    const help = 'You have an account already; joining adds this club to it.';
    return [
      {
        kind: 'line',
        name: 'password',
        label: 'Your password',
        type: 'password',
        autoComplete: 'current-password',
        help,
      },
    ];
  }
  return [
    {
      kind: 'line',
      name: 'name',
      label: 'Your name',
      autoComplete: 'name',
      max: 80,
      help: 'As it stands beside your remarks and signatures.',
    },
    {
      kind: 'line',
      name: 'password',
      label: 'A password',
      type: 'password',
      autoComplete: 'new-password',
      help: 'At least 15 characters; four or five unrelated words do well. You will give it again at every signature.',
    },
  ];
}

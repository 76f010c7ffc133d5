// One's own account: another password, and the end of every session.
import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { TextForm } from '@/app/_parts/text-form';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { leaveEverywhere, newPassword } from './actions';

export const metadata: Metadata = { title: 'Account' };

export default async function AccountPage() {
  const viewer = await currentViewer();
  if (viewer === null) redirect(addresses.signIn);
  const clubs = viewer.clubs.map((c) => c.name).join(', ');
  return (
    <PageFrame>
      <Sheet
        title={
          <PlainTitle
            over="Account"
            title={viewer.name}
            cells={[
              { label: 'E-mail', content: viewer.email },
              { label: 'Clubs', content: clubs || 'none' },
            ]}
          />
        }
      >
        <View letter="A" title="Another password">
          <TextForm
            action={newPassword}
            failed="Not changed."
            submit="Change the password"
            kind="main"
            inputs={[
              {
                kind: 'line',
                name: 'current',
                label: 'Present password',
                type: 'password',
                autoComplete: 'current-password',
              },
              {
                kind: 'line',
                name: 'next',
                label: 'New password',
                type: 'password',
                autoComplete: 'new-password',
                help: 'At least 15 characters; four or five unrelated words do well. Every other session ends.',
              },
            ]}
          />
        </View>
        <View letter="B" title="Every session">
          <p>Ends your sessions on all devices, this one too. Do this when a device is lost.</p>
          <TextForm
            action={leaveEverywhere}
            failed="Not signed out."
            submit="Sign out everywhere"
            inputs={[]}
          />
        </View>
      </Sheet>
    </PageFrame>
  );
}

// The way in.
import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { TextForm } from '@/app/_parts/text-form';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { Caution } from '@/lib/ui/notices/caution';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { enter } from './actions';

export const metadata: Metadata = { title: 'Sign in' };

export default async function SignInPage() {
  if ((await currentViewer()) !== null) redirect(addresses.home);
  return (
    <PageFrame>
      <Sheet title={<PlainTitle over="Pawl" title="Design review before the first power-up" />}>
        <View letter="A" title="Sign in">
          <TextForm
            action={enter}
            failed="Not signed in."
            submit="Sign in"
            kind="main"
            inputs={[
              { kind: 'line', name: 'email', label: 'E-mail', type: 'email', autoComplete: 'username' },
              {
                kind: 'line',
                name: 'password',
                label: 'Password',
                type: 'password',
                autoComplete: 'current-password',
              },
            ]}
          />
        </View>
        <View letter="B" title="What happens here">
          <p>
            Club members enter their actuators before they build or test them. Pawl works out what each part
            must carry, what breaks first and at which output torque, and what limits to set. Others check it,
            ask, and sign before high power is put to it.
          </p>
          <p>Joining is by invitation of a club’s steward.</p>
          <Caution grade="warning" title="A sheet does not make a test safe.">
            <p>
              High-power actuators store energy in packs, rotors and arms; they pinch, throw and burn. Local
              rules and competent persons come first. A printed part must never be the only thing that keeps a
              person safe.
            </p>
          </Caution>
        </View>
      </Sheet>
    </PageFrame>
  );
}

// The front door: to the shelf of one's club, or to sign-in.
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';

export default async function HomePage() {
  const viewer = await currentViewer();
  if (viewer === null) redirect(addresses.signIn);
  const [first] = viewer.clubs;
  if (first !== undefined) redirect(addresses.shelf(first.code));
  return (
    <PageFrame>
      <Sheet title={<PlainTitle over="Pawl" title="No club" />}>
        <EmptyState>You are not a member of any club at present. A club’s steward can invite you.</EmptyState>
      </Sheet>
    </PageFrame>
  );
}

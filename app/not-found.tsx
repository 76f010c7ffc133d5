// Nothing here, or nothing for this person: both look the same.

import type { Metadata } from 'next';
import Link from 'next/link';
import { PageFrame } from '@/app/_parts/page-frame';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { addresses } from './_parts/addresses';

export const metadata: Metadata = { title: 'Nothing at this address' };

export default function NotFound() {
  return (
    <PageFrame>
      <Sheet title={<PlainTitle over="Pawl" title="Nothing at this address" />}>
        <EmptyState>
          There is no such page, or it is not one of your club’s.{' '}
          <Link href={addresses.home}>To the shelf</Link>
        </EmptyState>
      </Sheet>
    </PageFrame>
  );
}

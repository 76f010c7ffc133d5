// From what a use case answers to a page: the value, the way to sign-in, not found, or the refusal in a sentence.
import Link from 'next/link';
import { notFound, redirect } from 'next/navigation';
import type { ReactNode } from 'react';
import { tell } from '@/lib/service/failures';
import type { Result } from '@/lib/service/result';
import { Failure } from '@/lib/ui/notices/notice';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { addresses } from './addresses';
import { PageFrame } from './page-frame';

/** Renders the value of a use case, or the page that fits its refusal. */
export function shown<T>(result: Result<T>, render: (value: T) => ReactNode): ReactNode {
  if (result.ok) return render(result.value);
  const { status, sentence } = tell(result.error);
  if (status === 401) redirect(addresses.signIn);
  // What cannot be read as an address of ours leads nowhere either.
  if (status === 404 || status === 400) notFound();
  return (
    <PageFrame>
      <Sheet title={<PlainTitle over="Pawl" title="Not allowed" />}>
        <Failure title="This page is not for you to open.">{sentence}</Failure>
        <p>
          <Link href={addresses.home}>To the shelf</Link>
        </p>
      </Sheet>
    </PageFrame>
  );
}

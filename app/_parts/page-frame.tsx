// What stands above every sheet: the way through the service and who is reading.
import type { ReactNode } from 'react';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { Viewer } from '@/lib/service/viewer';
import { Button } from '@/lib/ui/forms/button';
import { SiteBar } from '@/lib/ui/sheet/site-bar';
import { addresses } from './addresses';
import { signOut } from './sign-out';

interface PageFrameProps {
  /** Code of the club the page belongs to, when it does. */
  readonly club?: string;
  readonly current?: 'shelf' | 'coupons' | 'members' | 'ledger' | 'handbook';
  readonly children: ReactNode;
}

/** Site bar and page. */
export async function PageFrame({ club, current, children }: PageFrameProps) {
  const viewer = await currentViewer();
  return (
    <>
      <SiteBar
        links={linksOf(viewer, club, current)}
        viewer={viewer === null ? undefined : <Who viewer={viewer} />}
      />
      {children}
    </>
  );
}

function linksOf(viewer: Viewer | null, club: string | undefined, current: PageFrameProps['current']) {
  const here = viewer?.clubs.find((c) => c.code === club) ?? viewer?.clubs[0];
  const ofClub =
    here === undefined
      ? []
      : [
          { href: addresses.shelf(here.code), text: 'Shelf', current: current === 'shelf' },
          { href: addresses.coupons(here.code), text: 'Coupons', current: current === 'coupons' },
          { href: addresses.members(here.code), text: 'Members', current: current === 'members' },
          { href: addresses.ledger(here.code), text: 'Ledger', current: current === 'ledger' },
        ];
  return [...ofClub, { href: addresses.handbook, text: 'Handbook', current: current === 'handbook' }];
}

function Who({ viewer }: { readonly viewer: Viewer }) {
  return (
    <form action={signOut}>
      <a href={addresses.account}>{viewer.name}</a> <Button kind="quiet">Sign out</Button>
    </form>
  );
}

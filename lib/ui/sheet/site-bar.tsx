// The line above the sheet: the service's name, the ways through it, and who is reading.
import type { ReactNode } from 'react';
import { PawlMark } from '../marks/pawl-mark';

interface SiteBarProps {
  readonly links: readonly {
    readonly href: string;
    readonly text: string;
    readonly current?: boolean | undefined;
  }[];
  /** Name of the viewer, sign-out form, sign-in link. */
  readonly viewer?: ReactNode;
}

/** Site header with the main navigation. */
export function SiteBar({ links, viewer }: SiteBarProps) {
  return (
    <header className="site-bar">
      <a className="site-bar-name" href="/">
        <PawlMark />
        Pawl
      </a>
      <nav aria-label="Main">
        {links.map((link) => (
          <a key={link.href} href={link.href} aria-current={link.current === true ? 'page' : undefined}>
            {link.text}
          </a>
        ))}
      </nav>
      {viewer === undefined ? null : <div className="site-bar-viewer">{viewer}</div>}
    </header>
  );
}

// The root of every page: language, styles, the skip link, and the wait for a request that the nonce needs.
import type { Metadata, Viewport } from 'next';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import './globals.css';

export const metadata: Metadata = {
  title: { default: 'Pawl', template: '%s – Pawl' },
  description: 'Design review of home-built high-power actuators before they are tested.',
};

export const viewport: Viewport = {
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#fbfaf5' },
    { media: '(prefers-color-scheme: dark)', color: '#0f1620' },
  ],
};

export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  // A page rendered ahead of its request would carry no nonce, and the policy would refuse its scripts.
  await connection();
  return (
    <html lang="en">
      <body>
        <a className="skip" href="#content">
          Skip to the sheet
        </a>
        {children}
      </body>
    </html>
  );
}

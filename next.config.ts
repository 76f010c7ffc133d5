// How the pages are built and which headers every answer carries. The policy for scripts is in proxy.ts.
import type { NextConfig } from 'next';

const everywhere = [
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'X-Frame-Options', value: 'DENY' },
  { key: 'Referrer-Policy', value: 'same-origin' },
  { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
  { key: 'Permissions-Policy', value: 'camera=(), microphone=(), geolocation=(), payment=()' },
];

// What answers with data is never a page, so that nothing in it may run or be framed.
const dataOnly = [
  { key: 'Content-Security-Policy', value: "default-src 'none'; frame-ancestors 'none'; sandbox" },
];

const config: NextConfig = {
  poweredByHeader: false,
  reactStrictMode: true,
  serverExternalPackages: ['@node-rs/argon2', 'pg'],
  // The program of the threads is started from its file: a copy of the service without its sources must hold it too.
  outputFileTracingIncludes: { '/designs/**': ['.build/cli/thread.mjs'] },
  // Narrower than the editor's: a mistake in a test must not keep the service from starting.
  typescript: { tsconfigPath: 'tsconfig.build.json' },
  headers: async () => [
    { source: '/:path*', headers: everywhere },
    { source: '/api/:path*', headers: dataOnly },
  ],
};

export default config;

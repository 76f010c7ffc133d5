// Gives every page a fresh nonce and the policy that lets scripts and styles with that nonce run, and no others.
// It is no guard: who may see what is decided where the data is read.
import { type NextRequest, NextResponse } from 'next/server';

/** @param nonce one request's random text @param development the development server evaluates its own code */
function policy(nonce: string, development: boolean): string {
  const scripts = `'self' 'nonce-${nonce}' 'strict-dynamic'`;
  return [
    "default-src 'self'",
    `script-src ${scripts}${development ? " 'unsafe-eval'" : ''}`,
    `style-src 'self' ${development ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
    "img-src 'self' data: blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}

export function proxy(request: NextRequest): NextResponse {
  const nonce = crypto.randomUUID().replaceAll('-', '');
  const value = policy(nonce, process.env.NODE_ENV === 'development');
  // On the request too: from there the page renderer takes the nonce for its own scripts.
  const headers = new Headers(request.headers);
  headers.set('x-nonce', nonce);
  headers.set('Content-Security-Policy', value);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set('Content-Security-Policy', value);
  return response;
}

export const config = {
  // Each request through here costs a third of a bare page: data and static files go round it.
  matcher: ['/((?!api/|_next/static|_next/image|.*\\.(?:svg|ico|png|woff2|txt)$).*)'],
};

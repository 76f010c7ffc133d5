// next-auth's own addresses: reading and ending a session. Signing in is a server action of the sign-in page.
import NextAuth from 'next-auth/next';
import { requestAuthOptions } from '@/lib/service/sign-in/page-session';

interface Context {
  readonly params: Promise<{ readonly nextauth: string[] }>;
}

async function handle(request: Request, context: Context): Promise<Response> {
  const answered: unknown = await NextAuth(request, context, await requestAuthOptions());
  if (answered instanceof Response) return answered;
  throw new TypeError('next-auth gave no response.');
}

export { handle as GET, handle as POST };

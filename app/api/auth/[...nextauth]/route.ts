// next-auth's own addresses: reading and ending a session. Signing in is a server action of the sign-in page.
import NextAuth from 'next-auth/next';
import { requestAuthOptions } from '@/lib/service/sign-in/page-session';

interface Context {
  readonly params: Promise<{ readonly nextauth: string[] }>;
}

async function handle(request: Request, context: Context): Promise<Response> {
  const answer: (request: Request, context: Context) => Promise<Response> = NextAuth(
    await requestAuthOptions(),
  );
  return answer(request, context);
}

export { handle as GET, handle as POST };

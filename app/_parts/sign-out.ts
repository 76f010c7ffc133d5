'use server';
import { redirect } from 'next/navigation';
import { endSession } from '@/lib/service/sign-in/page-session';
import { addresses } from './addresses';

/** Ends the session on this device. */
export async function signOut(): Promise<void> {
  await endSession();
  redirect(addresses.signIn);
}

// Inputs about signing in, invitations and members.
import { z } from 'zod';
import { roles } from '@/lib/access/policy';
import { clubCode, id, line } from './terms';

const email = z
  .string()
  .trim()
  .toLowerCase()
  .max(254, 'An e-mail address has at most 254 characters.')
  .pipe(z.email('This is not an e-mail address.'));

const token = z.string().max(100);

export const signIn = z.object({
  email: z.string().trim().toLowerCase().max(254),
  password: z.string().max(1000),
  /** Network address the attempt came from, as the server saw it. */
  address: z.string().max(100),
});

export const changePassword = z.object({ current: z.string().max(1000), next: z.string().max(1000) });

export const invite = z.object({ club: clubCode, email, role: z.enum(roles) });

export const withdrawInvitation = z.object({ club: clubCode, invitationId: id });

export const invitationByToken = z.object({ token, address: z.string().max(100) });

export const join = z.object({
  token,
  address: z.string().max(100),
  name: line('Name', 80),
  /** New for those without an account, the existing one for those with. */
  password: z.string().max(1000),
});

export const members = z.object({ club: clubCode });

export const endMembership = z.object({ club: clubCode, userId: id });

export const changeRole = z.object({ club: clubCode, userId: id, role: z.enum(roles) });

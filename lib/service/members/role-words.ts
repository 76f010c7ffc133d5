// Roles in words, for forms: what may be chosen and what a form sent back means.
import { type Role, roleLabels, roles } from '@/lib/access/policy';

/** Role → label, in the order of the policy table. */
export const roleWords: Readonly<Record<Role, string>> = roleLabels;

/** The role that a form's text names; undefined when it names none. */
export function roleNamed(text: string): Role | undefined {
  return roles.find((role) => role === text);
}

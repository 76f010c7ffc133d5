// Loads the demo club into a database that holds no club yet.
import { anyClub } from '@/lib/service/members/found-club';
import { demoDesigns } from './designs/registry';
import { bringIn } from './play/people';
import { playDesign } from './play/play';
import { keepNote, newPassword } from './sign-in-note';

/** Returns false, and changes nothing, when the database holds a club already. */
export async function loadDemo(dataFolder: string): Promise<boolean> {
  if (await anyClub()) return false;
  const password = newPassword();
  // First the note: a club that nobody can sign in to is of no use to anyone.
  keepNote(dataFolder, password);
  const cast = await bringIn(password);
  for (const entry of demoDesigns) await playDesign(cast, password, entry);
  return true;
}

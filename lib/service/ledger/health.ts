// Whether the service can do its work: the database answers.
import { pingDatabase } from '@/lib/store/database';
import type { Contract } from '../contract';

export const health: Contract['health'] = async () => {
  try {
    return { database: 'answers', milliseconds: Math.round((await pingDatabase()) * 10) / 10 };
  } catch {
    // Why it is silent is the operator's business, not that of whoever asks.
    return { database: 'silent', milliseconds: null };
  }
};

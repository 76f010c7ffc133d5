// What this service is: its own version, and the version of the method it works by.
import { methodVersion } from '@/lib/assess/method';
import about from '@/package.json';

export const versions = { service: about.version, method: methodVersion } as const;

// Right: the store knows the client, and Node.
import { readFileSync } from 'node:fs';
import { client } from '@/generated/prisma/client';
import { thing } from '@/lib/design/thing';

export const taken = [client, thing, readFileSync];

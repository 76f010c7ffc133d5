// Right: what is written in the table for lib/access.
import { randomBytes } from 'node:crypto';
import { z } from 'zod';

export const taken = [randomBytes, z];

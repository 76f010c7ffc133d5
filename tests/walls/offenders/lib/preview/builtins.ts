// Wrong on purpose: preview may not touch files.
import { readFileSync } from 'node:fs';

export const taken = readFileSync;

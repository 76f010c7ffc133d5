// Wrong on purpose: work may not use the package pg.
import { Client } from 'pg';

export const taken = Client;

// Wrong on purpose: assess may not use the package pg.
import { Client } from 'pg';

export const taken = Client;

// Wrong on purpose: review may not use the package pg.
import { Client } from 'pg';

export const taken = Client;

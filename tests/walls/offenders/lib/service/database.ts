// Wrong on purpose: only the store knows the database client.
import { client } from '@/generated/prisma/client';

export const taken = client;

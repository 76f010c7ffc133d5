// Founds a club as whoever runs the service would: E2E_CODE, E2E_NAME, E2E_EMAIL, E2E_PERSON, E2E_PASSWORD.
import { closeService } from '@/lib/service/close';
import { foundClub } from '@/lib/service/members/found-club';

const { E2E_CODE = '', E2E_NAME = '', E2E_EMAIL = '', E2E_PERSON = '', E2E_PASSWORD = '' } = process.env;
const steward = { email: E2E_EMAIL, name: E2E_PERSON, password: E2E_PASSWORD };
const result = await foundClub({ code: E2E_CODE, name: E2E_NAME, steward });
await closeService();
if (!result.ok) throw new Error(`The second club was not founded: ${JSON.stringify(result.error)}`);

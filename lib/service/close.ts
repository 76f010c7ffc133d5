// Lets go of the database, so that a command of the command line can end.
export { closeDatabase as closeService } from '@/lib/store/database';

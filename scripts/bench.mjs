// @ts-check
// npm run bench -- [--json] [--strict]: medians of what must be fast, each against its limit, measured in one run on this
// machine. --json prints them as JSON; --strict exits 1 when a limit is missed.
import path from 'node:path';
import { parseArgs } from 'node:util';

// React is timed as it is served.
Object.assign(process.env, { NODE_ENV: 'production' });

const root = path.dirname(import.meta.dirname);

const { values: options } = parseArgs({
  options: { json: { type: 'boolean', default: false }, strict: { type: 'boolean', default: false } },
});
const { benchCalculation, benchGainMap, benchService, subjectOf } = await import('./bench/benches.mjs');
const { withService } = await import('./bench/place.mjs');
const { missed, table } = await import('./bench/report.mjs');

const port = Number(process.env.PORT || 3499);
const subject = await subjectOf(root);
const figures = [
  ...(await benchCalculation(root, subject)),
  ...(await benchGainMap(root)),
  ...(await withService(root, port, (service) => benchService(root, subject, service))),
];
if (options.json) console.log(JSON.stringify({ design: subject.title, figures }, null, 2));
else console.log(table(subject.title, figures));
process.exit(options.strict && figures.some(missed) ? 1 : 0);

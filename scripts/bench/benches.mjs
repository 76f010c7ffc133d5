// @ts-check
// What is measured, with the limit each figure is held to.
import http from 'node:http';
import { pathToFileURL } from 'node:url';
import { freshBundle } from '../cli/bundle.mjs';
import { bundleThreads } from '../start/threads.mjs';
import { fetchPage, requestsPerSecond } from './load.mjs';
import { medianTime } from './measure.mjs';

/**
 * @typedef {object} Figure
 * @property {string} what
 * @property {number} value
 * @property {string} unit
 * @property {'at most' | 'at least'} [bound]
 * @property {number} [limit] none: shown for its own sake
 */

/** @param {string} root @param {string} name of a file beside this one */
async function load(root, name) {
  const entry = `scripts/bench/${name}.ts`;
  const sources = ['lib', 'generated', 'scripts/bench', 'package-lock.json'];
  return import(pathToFileURL(await freshBundle(root, { entry, sources, packagesInside: false })).href);
}

/** @param {string} root @returns {Promise<{ title: string, document: object }>} */
export async function subjectOf(root) {
  const { largestDesign } = await load(root, 'largest');
  return largestDesign();
}

/** @param {string} root @param {{ document: object }} subject @returns {Promise<Figure[]>} */
export async function benchCalculation(root, { document }) {
  const { calculationsOf } = await load(root, 'calculation');
  const { starter, assessed, assessedWithSheet, assessedWhole, loopSimulated, preview } =
    calculationsOf(document);
  // Much runs a few times an assessment only, so that Node takes long to find what is worth compiling.
  const long = { warm: 1000, runs: 300 };
  const atMost = /** @type {const} */ ({ unit: 'ms', bound: 'at most' });
  return [
    {
      what: `Assessment of the starter “${starter}”, without simulations`,
      value: await medianTime(assessed, long),
      ...atMost,
      limit: 2,
    },
    {
      what: 'The same with the worked sheet',
      value: await medianTime(assessedWithSheet, long),
      ...atMost,
      limit: 5,
    },
    {
      what: 'Assessment with loop and faults simulated',
      value: await medianTime(assessedWhole, { warm: 100, runs: 60 }),
      ...atMost,
      limit: 25,
    },
    {
      what: 'Two seconds of its loop, simulated every 50 µs',
      value: await medianTime(loopSimulated, { warm: 20, runs: 40 }),
      ...atMost,
      limit: 40,
    },
    {
      what: 'Preview of the draft, from edit to drawing',
      value: await medianTime(preview, { warm: 200, runs: 300, prepare: (turn) => turn }),
      ...atMost,
      limit: 16,
    },
  ];
}

/** @param {string} root @returns {Promise<Figure[]>} */
export async function benchGainMap(root) {
  await bundleThreads(root);
  const { gainMapOf } = await load(root, 'gain-map');
  const { what, simulated, close } = gainMapOf();
  try {
    const value = (await medianTime(simulated, { warm: 1, runs: 5 })) / 1000;
    return [{ what, value, unit: 's', bound: 'at most', limit: 4 }];
  } finally {
    await close();
  }
}

/**
 * @param {string} root @param {{ title: string }} subject
 * @param {{ origin: string, dataFolder: string }} service as it runs
 * @returns {Promise<Figure[]>}
 */
export async function benchService(root, { title }, { origin, dataFolder }) {
  const club = await load(root, 'club');
  try {
    const { member, cookie, number, letter } = await club.openClub(dataFolder, title);
    // First: every further revision of the design makes its page a little longer.
    const pages = await benchPages(origin, cookie, `/designs/${number}/${letter}`);
    const publish = await medianTime((version) => club.publishOnce(member, number, version), {
      warm: 10,
      runs: 30,
      prepare: (turn) => club.changeDraft(member, number, turn),
    });
    return [{ what: 'Publishing', value: publish, unit: 'ms', bound: 'at most', limit: 50 }, ...pages];
  } finally {
    await club.close();
  }
}

/** @param {string} origin @param {string} cookie @param {string} path of the revision @returns {Promise<Figure[]>} */
async function benchPages(origin, cookie, path) {
  const bare = { path: '/cautions' };
  const revision = { path, cookie };
  const worked = { path: `${path}/worked`, cookie };
  const rates = await requestsPerSecond(origin, [bare, revision], { warm: 400, rounds: 9, requests: 80 });
  const [bareRate = Number.NaN, revisionRate = Number.NaN] = rates;
  return [
    { what: 'Bare page', value: bareRate, unit: 'requests/s' },
    { what: 'Revision page', value: revisionRate, unit: 'requests/s' },
    {
      what: 'Revision page against the bare page',
      value: (100 * revisionRate) / bareRate,
      unit: '%',
      bound: 'at least',
      limit: 50,
    },
    ...(await sizes(origin, { 'Bare page': bare, 'Revision page': revision, 'Worked sheet': worked })),
  ];
}

/** @param {string} origin @param {Record<string, import('./load.mjs').Page>} pages @returns {Promise<Figure[]>} */
async function sizes(origin, pages) {
  const figures = [];
  for (const [what, page] of Object.entries(pages)) {
    figures.push({
      what: `${what}, size`,
      value: (await fetchPage(http.globalAgent, origin, page)) / 1024,
      unit: 'KiB',
    });
  }
  return figures;
}

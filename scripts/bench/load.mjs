// @ts-check
// Asks pages for as fast as they answer, over a few kept connections on this machine, a counted number of times.
import http from 'node:http';
import { median } from './measure.mjs';

const connections = 8;

/** @typedef {{ path: string, cookie?: string }} Page */

/**
 * Requests per second of several pages. They take turns, round by round, so that whatever else the machine does at the
 * time weighs on all of them alike.
 * @param {string} origin @param {readonly Page[]} pages
 * @param {{ warm: number, rounds: number, requests: number }} count requests: of each page in each round
 * @returns {Promise<number[]>} the median of the rounds, for each page
 */
export async function requestsPerSecond(origin, pages, { warm, rounds, requests }) {
  const agent = new http.Agent({ keepAlive: true, maxSockets: connections });
  /** @type {number[][]} */
  const rates = pages.map(() => []);
  try {
    // Node goes on compiling what runs often for some hundreds of requests.
    for (const page of pages) await fetchMany(agent, origin, page, warm);
    for (let round = 0; round < rounds; round += 1) {
      for (const [i, page] of pages.entries()) {
        const began = performance.now();
        await fetchMany(agent, origin, page, requests);
        rates[i]?.push((requests * 1000) / (performance.now() - began));
      }
    }
  } finally {
    agent.destroy();
  }
  return rates.map(median);
}

/** @param {http.Agent} agent @param {string} origin @param {Page} page @param {number} requests */
async function fetchMany(agent, origin, page, requests) {
  let left = requests;
  const one = async () => {
    while (left > 0) {
      left -= 1;
      await fetchPage(agent, origin, page);
    }
  };
  await Promise.all(Array.from({ length: connections }, one));
}

/**
 * @param {http.Agent} agent @param {string} origin @param {Page} page
 * @returns {Promise<number>} bytes of the answer
 * @throws {Error} unless the page itself is answered
 */
export function fetchPage(agent, origin, { path, cookie }) {
  return new Promise((resolve, reject) => {
    const headers = { accept: 'text/html', ...(cookie === undefined ? {} : { cookie }) };
    const request = http.get(`${origin}${path}`, { agent, headers }, (answer) => {
      let bytes = 0;
      answer.on('data', (part) => {
        bytes += part.length;
      });
      answer.on('error', reject);
      answer.on('end', () => {
        if (answer.statusCode === 200) resolve(bytes);
        else reject(new Error(`${path} answered ${answer.statusCode}.`));
      });
    });
    request.on('error', reject);
  });
}

// @ts-check
// Says what is being done and how long it took, one line a step.

/**
 * @template T
 * @param {string} title what is being done, as a person reads it
 * @param {() => Promise<T> | T} work its value is passed on; a text it returns is printed beside the seconds
 * @returns {Promise<T>}
 */
export async function step(title, work) {
  const began = performance.now();
  const live = process.stdout.isTTY;
  if (live) process.stdout.write(`  ${title} …`);
  // Where no line can be written over, only what takes long is announced.
  const slow = setTimeout(() => {
    if (!live) process.stdout.write(`  ${title} …\n`);
  }, 2000);
  const seconds = () => `${((performance.now() - began) / 1000).toFixed(1)} s`;
  try {
    const value = await work();
    const note = typeof value === 'string' && value !== '' ? ` · ${value}` : '';
    process.stdout.write(`${live ? '\r\u001b[K' : ''}  ${title} · ${seconds()}${note}\n`);
    return value;
  } catch (error) {
    process.stdout.write(`${live ? '\r\u001b[K' : ''}  ${title} · failed after ${seconds()}\n`);
    throw error;
  } finally {
    clearTimeout(slow);
  }
}

// The small parts of starting: the secret, stamps, addresses, links, and the memory of a run.
import { spawn, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { repairLinks } from '../../scripts/postgres/binaries.mjs';
import { endProcess, isAlive, startedAt } from '../../scripts/postgres/process.mjs';
import { endLeftovers, forgetRun, rememberRun } from '../../scripts/start/leftovers.mjs';
import { chooseAddress } from '../../scripts/start/place.mjs';
import { keepSecret } from '../../scripts/start/secret.mjs';
import { hashOf, unlessStamped } from '../../scripts/start/stamp.mjs';

const base = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-start-'));
let folders = 0;

function folder(): string {
  folders += 1;
  const made = path.join(base, String(folders));
  fs.mkdirSync(made);
  return made;
}

afterAll(() => fs.rmSync(base, { recursive: true, force: true }));

describe('the secret', () => {
  it('is random, 32 bytes, for its owner only, and the same ever after', () => {
    const [here, there] = [folder(), folder()];
    const secret = keepSecret(here, {});
    expect(Buffer.from(secret, 'base64url')).toHaveLength(32);
    expect(fs.statSync(path.join(here, 'secret')).mode & 0o777).toBe(0o600);
    expect(keepSecret(here, {})).toBe(secret);
    expect(keepSecret(there, {})).not.toBe(secret);
  });

  it('gives way to one that is set, and is refused when it was cut short', () => {
    const here = folder();
    expect(keepSecret(here, { NEXTAUTH_SECRET: 'set from outside' })).toBe('set from outside');
    fs.writeFileSync(path.join(here, 'secret'), 'short');
    expect(() => keepSecret(here, {})).toThrow(/too short/);
  });
});

describe('a stamp', () => {
  it('lets work be done once, again after a change, and again after a failure', async () => {
    const here = folder();
    const stamp = path.join(here, 'made/stamp');
    let done = 0;
    const work = async () => {
      done += 1;
    };
    fs.mkdirSync(path.join(here, 'from/deep'), { recursive: true });
    fs.writeFileSync(path.join(here, 'from/deep/a'), '1');
    const now = () => hashOf(here, ['from', 'not-there']);
    expect(await unlessStamped(stamp, now(), work)).toBe('');
    expect(await unlessStamped(stamp, now(), work)).toBe('nothing changed');
    expect(done).toBe(1);
    fs.writeFileSync(path.join(here, 'from/deep/a'), '2');
    const broken = () => Promise.reject(new Error('broken'));
    await expect(unlessStamped(stamp, now(), broken)).rejects.toThrow('broken');
    expect(await unlessStamped(stamp, now(), work)).toBe('');
    expect(done).toBe(2);
  });

  it('notices a new file, a renamed one and text that moved from one file to the next', () => {
    const here = folder();
    fs.writeFileSync(path.join(here, 'a'), 'xy');
    fs.writeFileSync(path.join(here, 'b'), 'z');
    const first = hashOf(here, ['a', 'b']);
    fs.writeFileSync(path.join(here, 'a'), 'x');
    fs.writeFileSync(path.join(here, 'b'), 'yz');
    const moved = hashOf(here, ['a', 'b']);
    fs.renameSync(path.join(here, 'b'), path.join(here, 'c'));
    expect(new Set([first, moved, hashOf(here, ['a', 'b', 'c'])]).size).toBe(3);
  });
});

describe('the address', () => {
  it('is this machine, port 3000, unless HOST and PORT say otherwise', () => {
    expect(chooseAddress({})).toEqual({
      host: '127.0.0.1',
      port: 3000,
      url: 'http://127.0.0.1:3000',
    });
    const all = chooseAddress({ HOST: '0.0.0.0', PORT: '8080' });
    expect(all).toEqual({ host: '0.0.0.0', port: 8080, url: 'http://127.0.0.1:8080' });
  });

  it.each(['0', '70000', 'web', '3000.5'])('refuses port %s in a sentence', (port) => {
    expect(() => chooseAddress({ PORT: port })).toThrow(/PORT must be a whole number/);
  });
});

describe('the links to the libraries of PostgreSQL', () => {
  it('are made where missing, mended where wrong, and left alone where right', () => {
    const native = path.join(folder(), 'native');
    fs.mkdirSync(path.join(native, 'lib'), { recursive: true });
    fs.mkdirSync(path.join(native, 'bin'));
    fs.writeFileSync(path.join(native, 'bin/postgres'), '', { mode: 0o600 });
    fs.writeFileSync(path.join(native, 'lib/libpq.so.5.18'), 'library');
    const link = { source: 'native/lib/libpq.so.5.18', target: 'native/lib/libpq.so.5' };
    fs.writeFileSync(path.join(native, 'pg-symlinks.json'), JSON.stringify([link]));
    expect(repairLinks(native)).toBe(1);
    expect(fs.readFileSync(path.join(native, 'lib/libpq.so.5'), 'utf8')).toBe('library');
    expect(fs.statSync(path.join(native, 'bin/postgres')).mode & 0o111).toBe(0o111);
    expect(repairLinks(native)).toBe(0);
    fs.rmSync(path.join(native, 'lib/libpq.so.5'));
    fs.symlinkSync('nowhere', path.join(native, 'lib/libpq.so.5'));
    expect(repairLinks(native)).toBe(1);
  });
});

describe('a process', () => {
  it('is known by its number and its start, and is not alive once it is a zombie', async () => {
    // The shell turns into a sleeper that never asks how its child ended: the child stays a zombie.
    const shell = spawn('sh', ['-c', 'sleep 0.2 & echo $!; exec sleep 30'], {
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    const zombie = await new Promise<number>((resolve) => {
      shell.stdout.once('data', (text) => resolve(Number(String(text))));
    });
    const pid = shell.pid ?? 0;
    expect(isAlive(pid)).toBe(true);
    expect(startedAt(pid)).not.toBeNull();
    await expect.poll(() => isAlive(zombie)).toBe(false);
    // The signal alone would call it alive for ever.
    expect(() => process.kill(zombie, 0)).not.toThrow();
    await endProcess(pid);
    expect(isAlive(pid)).toBe(false);
    expect(startedAt(pid)).toBeNull();
  });
});

describe('the memory of a run', () => {
  it('lets the next start end the web process of a killed one', async () => {
    const here = folder();
    const web = spawn('sleep', ['60'], { detached: true, stdio: 'ignore' });
    const pid = web.pid ?? 0;
    rememberRun(here, 'http://127.0.0.1:3000', pid);
    const file = path.join(here, 'run.json');
    const run = JSON.parse(fs.readFileSync(file, 'utf8'));
    const dead = spawnSync('true').pid;
    fs.writeFileSync(file, JSON.stringify({ ...run, starter: { pid: dead, since: '1' } }));
    await endLeftovers(here);
    expect(isAlive(pid)).toBe(false);
    expect(fs.existsSync(file)).toBe(false);
  });

  it('spares a stranger who was given the same number since', async () => {
    const here = folder();
    const stranger = spawn('sleep', ['60'], { stdio: 'ignore' });
    const pid = stranger.pid ?? 0;
    const dead = { pid: spawnSync('true').pid, since: '1' };
    const run = { url: '', starter: dead, web: { pid, since: 'another time' } };
    fs.writeFileSync(path.join(here, 'run.json'), JSON.stringify(run));
    await endLeftovers(here);
    expect(isAlive(pid)).toBe(true);
    await endProcess(pid);
  });

  it('refuses a second start beside a living one, naming its address', async () => {
    const here = folder();
    rememberRun(here, 'http://127.0.0.1:3123', null);
    await expect(endLeftovers(here)).rejects.toThrow(/already runs.*3123/);
    forgetRun(here);
    await expect(endLeftovers(here)).resolves.toBeUndefined();
  });
});

/** Every published case of machine elements is either worked beside this file or named with the reason why not. */
import { expect, it } from 'vitest';
import bearings from './bearings.json';
import control from './control.json';
import fasteners from './fasteners.json';
import fixture from './fixture.json';
import hazard from './hazard.json';
import motor from './motor.json';
import sensor from './sensor.json';
import shafts from './shafts.json';
import supply from './supply.json';
import unworked from './unworked.json';

const worked = [motor, supply, sensor, fixture, control, hazard, bearings, shafts, fasteners].flatMap(
  (file) => Object.keys(file),
);

it('accounts for every case of the collection exactly once', () => {
  const all = [...worked, ...Object.keys(unworked.cases)];
  expect(new Set(all).size).toBe(all.length);
  expect(all.length).toBe(unworked.total);
});

it('says of every case that is not worked why it is not', () => {
  for (const [id, reason] of Object.entries(unworked.cases)) expect(reason.length, id).toBeGreaterThan(40);
  expect(Object.keys(unworked.cases)).toEqual(['SCR-13']);
});

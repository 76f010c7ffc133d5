/** Every published case of machine elements is either worked beside this file or named as belonging to a later storey. */
import { expect, it } from 'vitest';
import bearings from './bearings.json';
import control from './control.json';
import fixture from './fixture.json';
import hazard from './hazard.json';
import later from './later.json';
import motor from './motor.json';
import sensor from './sensor.json';
import shafts from './shafts.json';
import supply from './supply.json';

const worked = [motor, supply, sensor, fixture, control, hazard, bearings, shafts].flatMap((file) =>
  Object.keys(file),
);

it('accounts for every case of the collection exactly once', () => {
  const all = [...worked, ...later.later];
  expect(new Set(all).size).toBe(all.length);
  expect(all.length).toBe(later.total);
});

it('leaves only screws to a later storey', () => {
  for (const id of later.later) expect(id).toMatch(/^SCR-\d\d$/);
});

// Whether the sensor knows which of its turns it is in, and how far the output moves while a reading is on its way.
import { filterLag, likeReadings, movedBetween, readingLag } from '@/lib/calc/sensor/turns';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type Work } from '../../work';

const turn = practice(2 * Math.PI, 'one turn');

/** A potentiometer has its travel and no turns to count, unless someone says that it begins again. */
export function turns(work: Work, needed: Traced): void {
  const { turnCount, kind } = work.document.sensor;
  const asked = turnCount ?? (kind === 'potentiometer' ? 'kept' : null);
  if (asked !== 'kept' && (asked !== null || needed.value > turn.value)) oneTurn(work, needed, asked);
  age(work);
}

function oneTurn(work: Work, needed: Traced, asked: 'single' | 'counted' | null): void {
  addFigure(work, {
    key: 'sensor.likeReadings',
    section: 'sensor',
    label: 'Places of the output that the sensor reads alike after power returns',
    symbol: 'n_alike',
    unit: '1',
    value: work.sheet.work('sensor', 'sensor', likeReadings, { phi_need: needed, phi_turn: turn }),
    better: 'less',
  });
  addCheck(work, {
    key: 'sensor.oneTurn',
    section: 'sensor',
    label: 'Sensor, one turn for the whole travel',
    mode: 'travel',
    unit: 'deg',
    demandLabel: 'Output travel, as the sensor turns',
    capacityLabel:
      asked === 'counted'
        ? 'One turn: what the sensor knows after power returns'
        : 'One turn: where it reads again from its start',
    demand: needed,
    capacity: asked === null ? null : turn,
    required: 1,
    requiredFrom: 'Beyond one turn a reading stands for several places of the output',
    missing: 'What the sensor does beyond one turn is not entered.',
  });
}

function age(work: Work): void {
  const { sensor, duty } = work.design;
  const omega = duty.outputSpeed;
  const { refreshRate: f, filter: tau_s } = sensor;
  const phi_new = f === null ? null : work.sheet.work('sensor', 'sensor', movedBetween, { omega, f });
  const phi_lag = tau_s === null ? null : work.sheet.work('sensor', 'sensor', filterLag, { omega, tau_s });
  const figure = (key: string, label: string, symbol: string, value: Traced | null, missing: string) =>
    addFigure(work, {
      key: `sensor.${key}`,
      section: 'sensor',
      ...{ label, symbol, value, missing },
      unit: 'deg',
      better: 'less',
    });
  figure(
    'movedBetween',
    'Way of the output between two readings, at the output speed',
    'phi_new',
    phi_new,
    'How many new readings a second the sensor gives is not entered.',
  );
  figure(
    'readingLag',
    'Output ahead of its reading at the output speed, filter included',
    'phi_old',
    phi_new === null || phi_lag === null
      ? null
      : work.sheet.work('sensor', 'sensor', readingLag, { phi_new, phi_lag }),
    'The rate of new readings or the filter on them is not entered.',
  );
}

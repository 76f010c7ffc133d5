/** The warm lumps of the motor and its magnets beside scipy's general solver; lumps.py, beside this, made the figures. */
import {
  after,
  applied,
  type Course,
  coldLumps,
  courseOf,
  halvedCourses,
  type LumpLoad,
  periodicRises,
  timeToRises,
} from '@/lib/calc/thermal/lumps';
import { magnetRise } from '@/lib/calc/thermal/magnets';
import type { Independent } from '../method';
import found from './lumps.json';

const growth = found.alpha20 / (1 + found.alpha20 * (found.ambient - 20));
const tolerance = 1e-6;

type Motor = (typeof found.holds)[number]['motor'];

const nodesOf = (m: Motor) => ({
  windingToCase: m.R_wc,
  caseToAmbient: m.R_ca,
  windingCapacity: m.C_w,
  caseCapacity: m.C_c,
});

/** A peak phase current i heats all phases together by 3/4 of the line-to-line resistance times its square. */
const atRest = (m: Motor, current: number): LumpLoad => ({
  copperLoss: 0.75 * m.R * current ** 2,
  growth,
  share: 2,
  ironLoss: 0,
  caseLoss: 0,
});

const beside = (own: number, other: number) => ({ own, other, tolerance });

function holds() {
  const rows = found.holds.map(({ motor, current, time, worst, others, case: shell }, i) => {
    const own = applied(courseOf(nodesOf(motor), atRest(motor, current), time), coldLumps);
    return {
      [`hold ${i + 1}, worst phase`]: beside(own.worst, worst),
      [`hold ${i + 1}, other phases`]: beside(own.others, others),
      [`hold ${i + 1}, case`]: beside(own.case, shell),
    };
  });
  return Object.assign({}, ...rows);
}

function times() {
  const horizon = 3000;
  const rows = found.times.map(({ motor, current, limit, time }, i) => {
    const halved = halvedCourses(nodesOf(motor), atRest(motor, current), horizon);
    return { [`time ${i + 1}`]: beside(timeToRises(halved, limit, horizon) ?? Number.NaN, time) };
  });
  return Object.assign({}, ...rows);
}

function cycles() {
  const rows = found.cycles.map(({ motor, phases, worst, others, case: shell }, i) => {
    const nodes = nodesOf(motor);
    let whole: Course | null = null;
    for (const p of phases) {
      const load = {
        ...atRest(motor, p.current),
        share: p.rest ? 2 : 1,
        ironLoss: p.iron,
        caseLoss: p.friction,
      };
      const course = courseOf(nodes, load, p.time);
      whole = whole === null ? course : after(whole, course);
    }
    const own = (whole === null ? null : periodicRises(whole)) ?? coldLumps;
    return {
      [`cycle ${i + 1}, worst phase`]: beside(own.worst, worst),
      [`cycle ${i + 1}, other phases`]: beside(own.others, others),
      [`cycle ${i + 1}, case`]: beside(own.case, shell),
    };
  });
  return Object.assign({}, ...rows);
}

function magnets() {
  const rows = found.magnets.map(({ motor, loss, constant, coefficient, case: shell }, i) => {
    const own = magnetRise.of({
      P_0: loss,
      P_c: constant,
      R_wc: motor.R_wc,
      R_ca: motor.R_ca,
      alpha: growth,
      alpha_B: coefficient,
      theta_amb: found.ambient,
      theta_ref: 20,
    });
    return { [`magnets ${i + 1}`]: beside(own, shell) };
  });
  return Object.assign({}, ...rows);
}

const method = 'three phases and case with their own heat balances, stepped by scipy (DOP853, 1e-11)';

export const motorHeat: readonly Independent[] = [
  {
    id: 'heat-hold',
    topic: 'motor and heat',
    title: 'Rises in a hold, worst phase apart',
    method,
    work: holds,
  },
  { id: 'heat-time', topic: 'motor and heat', title: 'Time to a rise', method, work: times },
  {
    id: 'heat-cycle',
    topic: 'motor and heat',
    title: 'Rises to which a duty comes back',
    method: `${method}, gone through 1500 times from cold`,
    work: cycles,
  },
  {
    id: 'heat-magnets',
    topic: 'motor and heat',
    title: 'Steady rise of the magnets',
    method: 'the heat balance, its root found by Brent’s method of scipy',
    work: magnets,
  },
];

// Every claim that the change notes and remarks of the demo club make, held against the assessment of its documents.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Assessment, Check } from '@/lib/assess/assessment';
import { type DemoDesign, documentsOf, set } from '@/lib/demo/designs/demo-design';
import { derrick } from '@/lib/demo/designs/derrick';
import { paddle } from '@/lib/demo/designs/paddle';
import { demoDesigns } from '@/lib/demo/designs/registry';
import { shutter } from '@/lib/demo/designs/shutter';
import { stageTrap } from '@/lib/demo/designs/stage-trap';
import { tideFlap } from '@/lib/demo/designs/tide-flap';
import { editsBetween } from '@/lib/demo/play/edits-between';
import { design } from '@/lib/design/document';
import { isPair } from '@/lib/design/parts/stage';
import { starters } from '@/lib/design/starters/registry';

function assessed(demo: DemoDesign): { readonly [letter: string]: Assessment } {
  const { published, draft } = documentsOf(demo);
  const letters = published.map((document, i) => [String.fromCharCode(65 + i), assess(document)] as const);
  return { ...Object.fromEntries(letters), draft: assess(draft) };
}

function at(sheets: { readonly [letter: string]: Assessment }, letter: string): Assessment {
  const found = sheets[letter];
  if (found === undefined) throw new Error(`no revision ${letter}`);
  return found;
}

function check(sheet: Assessment, key: string): Check {
  const found = sheet.checks.find((c) => c.key === key);
  if (found === undefined) throw new Error(`no check ${key}`);
  return found;
}

const factor = (sheet: Assessment, key: string) => check(sheet, key).factor ?? Number.NaN;
const open = (sheet: Assessment, weight: string) =>
  sheet.findings.filter((f) => f.class === weight).map((f) => f.rule);
const below = (sheet: Assessment) => sheet.checks.filter((c) => c.status !== 'holds').map((c) => c.key);

describe('every demo design', () => {
  it.each(demoDesigns.map((d) => [d.design.title, d.design] as const))(
    '%s: each revision and the draft is a valid document',
    (_, demo) => {
      const { published, draft } = documentsOf(demo);
      for (const document of [...published, draft]) expect(design.parse(document)).toEqual(document);
    },
  );

  it.each(demoDesigns.map((d) => [d.design.title, d] as const))(
    '%s: its base is reached from its starter by edits that a person could type',
    (_, { design: demo, starter }) => {
      const from = Object.entries(starters).find(([key]) => key === starter)?.[1].document;
      if (from === undefined) throw new Error(`no starter ${starter}`);
      const entered: DemoDesign = {
        ...demo,
        base: from,
        testedFrom: null,
        revisions: [{ author: 'tam', changeNote: '', edits: editsBetween(from, demo.base) }],
        ahead: null,
      };
      expect(documentsOf(entered).published).toEqual([demo.base]);
    },
  );
});

describe('observatory shutter drive', () => {
  const sheets = assessed(shutter);
  const [a, b, c, d] = [at(sheets, 'A'), at(sheets, 'B'), at(sheets, 'C'), at(sheets, 'D')];
  const root = 'train.stages.out.pinion.root.life';

  it('revision A: the stage 3 pinion is the weakest link, undercut, and holds less than the duty asks', () => {
    expect(a.headline.weakest).toBe(root);
    expect(a.headline.holdsTo).toBeLessThan(a.headline.demanded);
    expect(open(a, 'major')).toContain('undercut');
  });

  it('revision B cures that pinion, but not yet the wheel beside it', () => {
    expect(check(a, root).status).toBe('below');
    expect(check(b, root).status).toBe('holds');
    expect(open(b, 'major')).not.toContain('undercut');
    expect(check(b, 'train.stages.out.wheel.root.life').status).toBe('below');
  });

  it('revision C makes stage 2 worse, and solid teeth alone would not have saved its 14 mm', () => {
    const wheel = 'train.stages.mid.wheel.root.life';
    expect(c.headline.weakest).toBe(wheel);
    expect(factor(c, wheel)).toBeLessThan(factor(b, wheel) / 3);
    const { published } = documentsOf(shutter);
    const document = published[2];
    if (document === undefined) throw new Error('no revision C');
    const solid = structuredClone(document);
    for (const stage of solid.train.stages) if (isPair(stage)) stage.wheel.solidFraction = 100;
    expect(check(assess(solid), wheel).status).toBe('below');
  });

  it('until C the drive forces six times the duty, and more than the weakest link holds', () => {
    expect((c.headline.forced ?? 0) / c.headline.demanded).toBeCloseTo(6.3, 1);
    expect(open(c, 'critical')).toContain('weakest-link');
  });

  it('revision C describes shafts and hubs, and two set screws turn out to slip before their factor', () => {
    expect(b.headline.notAssessed).toBeGreaterThan(15);
    expect(c.headline.notAssessed).toBe(0);
    expect(below(c).filter((key) => key.endsWith('Hub.slip'))).toEqual([
      'train.stages.mot.inputHub.slip',
      'output.armHub.slip',
    ]);
  });

  it('revision D: neither hub can slip any more, and nothing else of theirs falls short', () => {
    const hubs = d.checks.filter((k) => /^(train\.stages\.mot\.inputHub|output\.armHub)\./.test(k.key));
    expect(hubs.length).toBeGreaterThan(1);
    expect(hubs.filter((k) => k.status !== 'holds' || k.mode === 'slip')).toEqual([]);
  });

  it('revision D: nothing is left unassessed, and every check holds but the strike, which the springs keep above 1', () => {
    expect(below(d)).toEqual(['strike.peak']);
    expect(factor(d, 'strike.peak')).toBeCloseTo(1.1, 1);
    expect(factor(c, 'strike.peak')).toBeLessThan(0.1);
    expect(d.headline.notAssessed).toBe(0);
    expect([...open(d, 'critical'), ...open(d, 'major')]).toEqual([]);
    expect(d.headline.forced).toBeLessThan(d.headline.holdsTo ?? 0);
  });

  it('revision D: the shutter starts with a little over 3 A of the 5 A allowed', () => {
    const current = check(d, 'drive.motorCurrent');
    expect(current.demand).toBeCloseTo(3.1, 1);
    expect(current.capacity).toBe(5);
  });

  it('one step of the command is a millimetre of shutter at the 60 mm chain wheel', () => {
    const step = d.figures.find((f) => f.key === 'loop.commandStep')?.value ?? 0;
    expect(step * 60).toBeCloseTo(1.07, 2);
  });
});

describe('sluice-paddle lifter', () => {
  const sheets = assessed(paddle);
  const [a, b, c, draft] = [at(sheets, 'A'), at(sheets, 'B'), at(sheets, 'C'), at(sheets, 'draft')];
  const root = 'train.stages.third.pinion.root.life';

  it('revision A: the PETG pinion of stage 3 is the first to go, and a jam is forced with seven times the duty', () => {
    expect(a.headline.weakest).toBe(root);
    expect(check(a, root).status).toBe('below');
    expect((a.headline.forced ?? 0) / a.headline.demanded).toBeCloseTo(7.3, 1);
    expect(open(a, 'critical')).toContain('weakest-link');
  });

  it('revision B cures the stage 3 pinion, and every tooth root keeps its factor for the duty', () => {
    expect(check(b, root).status).toBe('holds');
    expect(below(b).filter((key) => key.includes('.root.'))).toEqual([]);
  });

  it('revision C: the motor current limit no longer forces what breaks, and leaves room to start', () => {
    expect([...open(b, 'critical'), ...open(b, 'major')]).toContain('weakest-link');
    expect([...open(c, 'critical'), ...open(c, 'major')]).not.toContain('weakest-link');
    const current = check(c, 'drive.motorCurrent');
    expect(current.demand).toBeCloseTo(3.4, 1);
    expect(current.capacity).toBe(5);
  });

  it('revision B describes shafts and hubs: the clamp of the rack pinion slips at half of the duty', () => {
    expect(a.headline.notAssessed).toBeGreaterThan(20);
    expect(b.headline.weakest).toBe('output.armHub.slip');
    expect(factor(b, 'output.armHub.slip')).toBeCloseTo(0.5, 1);
    expect(check(b, 'train.stages.third.inputHub.slip').status).toBe('below');
  });

  it('revision C: neither hub slips, and the train holds to more than twice the duty', () => {
    expect(c.checks.filter((k) => /(third\.inputHub|armHub)\.slip$/.test(k.key))).toEqual([]);
    expect(c.headline.holdsTo).toBeGreaterThan(2 * c.headline.demanded);
  });

  it('revision C: every check holds but those of a blow, at the stop or by a jam, and nothing else holds the paddle', () => {
    expect(c.headline.notAssessed).toBe(0);
    expect(below(c)).toEqual(['strike.peak', 'faults.train']);
    expect(factor(c, 'faults.train')).toBeGreaterThan(3);
    const weighty = [...open(c, 'critical'), ...open(c, 'major')];
    expect(weighty.sort()).toEqual(['printed-load-path', 'strike-breaks']);
  });

  it('the draft ahead of C relieves the flanks of its last two wheels, and lets nothing fall', () => {
    for (const wheel of ['third', 'rack'].map((id) => `train.stages.${id}.wheel.flank.life`))
      expect(factor(draft, wheel), wheel).toBeGreaterThan(1.1 * factor(c, wheel));
    expect(below(draft)).toEqual(['strike.peak']);
  });

  it('a step of the command raises the paddle by a fifth of a millimetre at the 100 mm pinion', () => {
    const step = c.figures.find((f) => f.key === 'loop.commandStep')?.value ?? 0;
    expect(step * 100).toBeCloseTo(0.17, 2);
  });
});

describe('stage-trap lift', () => {
  const sheets = assessed(stageTrap);
  const [a, b, c] = [at(sheets, 'A'), at(sheets, 'B'), at(sheets, 'C')];
  const wheel = 'train.stages.second.wheel.root.life';

  it('revision A: held by hand, coasting when the command is lost, 176 N·m forced', () => {
    expect(open(a, 'critical')).toEqual(['lost-command', 'held-by-hand']);
    expect(a.headline.forced).toBeCloseTo(176, 0);
  });

  it('revision B: the inserted stage halves the motor’s load, doubles what can be forced and goes first itself', () => {
    const load = (s: Assessment) => s.figures.find((f) => f.key === 'train.motorTorquePeak')?.value ?? 0;
    expect(load(b) / load(a)).toBeGreaterThan(0.45);
    expect(load(b) / load(a)).toBeLessThan(0.55);
    expect((b.headline.forced ?? 0) / (a.headline.forced ?? 1)).toBeCloseTo(2, 2);
    expect(b.headline.weakest).toBe(wheel);
    expect(open(a, 'critical')).not.toContain('weakest-link');
    expect(open(b, 'critical')).toContain('weakest-link');
  });

  it('revision C: a jam no longer breaks it, but the wheel of stage 3 keeps 1.2 where 2.4 is required', () => {
    const peaks = c.checks.flatMap((k) => (k.mode === 'peak' && k.holdsTo !== null ? [k.holdsTo] : []));
    expect(peaks.length).toBeGreaterThan(20);
    expect(c.headline.forced).toBeLessThan(Math.min(...peaks));
    expect(factor(c, wheel)).toBeCloseTo(1.2, 1);
    expect(check(c, wheel).required).toBe(2.4);
  });

  it('module 3 with 42 mm of face would cure that wheel, as the reopened thread says', () => {
    const advised: DemoDesign = {
      ...stageTrap,
      ahead: {
        author: 'tam',
        edits: [
          set('train.stages.second.module', '3 mm'),
          set('train.stages.second.faceWidth', '42 mm'),
          set('train.stages.second.centreDistance', '112 mm'),
        ],
      },
    };
    expect(check(at(assessed(advised), 'draft'), wheel).status).toBe('holds');
  });

  it('revision C: thrust and holding are answered, the lost command is not', () => {
    expect(c.findings.map((f) => f.rule)).not.toContain('thrust');
    expect(check(c, 'rig.hold').status).toBe('holds');
    expect(open(c, 'critical')).toEqual(['lost-command']);
  });

  it('revision C describes the train, but neither the joint of the drum nor the motor’s screws nor the stops', () => {
    const unknown = c.checks.filter((k) => k.status === 'not assessed').map((k) => k.key);
    expect(unknown).toEqual(['output.armHub.peak', 'case.motorScrews.slip', 'strike.peak']);
  });
});

describe('derrick slewing foot', () => {
  const sheets = assessed(derrick);
  const [a, b] = [at(sheets, 'A'), at(sheets, 'B')];
  const ring = 'train.stages.ring.wheel.root.life';

  it('goes through a belt, planets and a ring', () => {
    expect(derrick.base.train.stages.map((s) => s.kind)).toEqual(['belt', 'planetary', 'internal']);
  });

  it('revision A: the printed ring is the weakest link and falls short, and bare stops break the clamp of the boom', () => {
    expect(a.headline.weakest).toBe(ring);
    expect(check(a, ring).status).toBe('below');
    expect(open(a, 'critical')).toContain('strike-breaks');
  });

  it('the coupon tests take a tenth of the ring’s strength, and reach nothing of steel', () => {
    const [, second] = documentsOf(derrick).published;
    if (second === undefined) throw new Error('no revision B');
    const untested = assess({ ...second, coupons: [] });
    const ratio = (key: string) => (check(b, key).capacity ?? 0) / (check(untested, key).capacity ?? 1);
    expect(ratio(ring)).toBeCloseTo(33 / 37, 2);
    expect(ratio('train.stages.ring.pinion.root.life')).toBe(1);
  });

  it('revision B: 60 mm of face give the ring its factor on the club’s own numbers', () => {
    expect(check(b, ring).status).toBe('holds');
  });

  it('revision B: springs at the stops, so that a runaway stops without breaking anything', () => {
    expect(open(b, 'critical')).toEqual([]);
    expect(factor(a, 'strike.peak')).toBeLessThan(1);
    expect(factor(b, 'strike.peak')).toBeGreaterThan(1);
  });
});

describe('tide-flap lifter', () => {
  const sheets = assessed(tideFlap);
  const [a, b] = [at(sheets, 'A'), at(sheets, 'B')];

  it('revision A: the printed worm wheel gets too warm and falls short in root and flank', () => {
    for (const what of ['root.peak', 'root.life', 'temperature', 'flank.life'])
      expect(check(a, `train.stages.worm.wormWheel.${what}`).status, what).toBe('below');
    expect(open(a, 'critical')).toContain('sensorless-hold');
  });

  it('revision B: the brass wheel holds, but nobody knows what its flanks bear', () => {
    expect(check(b, 'train.stages.worm.wormWheel.root.peak').status).toBe('holds');
    expect(check(b, 'train.stages.worm.wormWheel.flank.life').status).toBe('not assessed');
  });

  it('revision B: one critical finding is left, the strike; and the worm alone holds the flap', () => {
    expect(open(b, 'critical')).toEqual(['strike-breaks']);
    expect(open(b, 'major')).toContain('worm-self-locking');
  });
});

import { describe, expect, it } from 'vitest';
import { eyeFields } from '../../../src/islands/workroom/measureFields.ts';
import { pairDraft, readMeasured } from '../../../src/islands/workroom/measuring.ts';
import { inspectPair } from '../../../src/workroom/inspection/inspectPair.ts';
import { judgedOf, PAIRS, shop } from '../../workroom/jobs.ts';

const single = judgedOf(PAIRS.single);
const powers = { 'right.sphere': '-3.25', 'left.sphere': 'plano' };
const names = (pair: keyof typeof PAIRS) => eyeFields(judgedOf(PAIRS[pair])).map(({ name }) => name);

describe('the fields of an inspection', () => {
  it('are those that the pair can be measured by', () => {
    expect(names('single')).not.toContain('add');
    expect(names('progressive')).toEqual(expect.arrayContaining(['add', 'thinning']));
    expect(names('bifocal')).toEqual(expect.arrayContaining(['add', 'segment', 'tilt']));
    expect(names('sun')).toContain('polarising');
  });
});

describe('what is typed', () => {
  it('is read with either decimal sign, and a word for no power', () => {
    const { measured } = readMeasured(single, { ...powers, 'right.sphere': '\u22123,25' }, 0);
    expect([measured?.right.power.sphereD, measured?.left.power.sphereD]).toEqual([-3.25, 0]);
  });

  it('is no pair while a power is missing, and names the eye', () => {
    const { measured, missing } = readMeasured(single, { 'right.sphere': '-3.25' }, 0);
    expect([measured, missing]).toEqual([null, ['left']]);
  });

  it('of which a wrong power is not missing, and says why', () => {
    const { missing, wrong } = readMeasured(single, { ...powers, 'right.sphere': '-3,25x' }, 0);
    expect([missing, wrong.map(({ key, why }) => [key, why])]).toEqual([[], [['right.sphere', 'unread']]]);
  });

  it.each([
    ['right.sphere', '-325'],
    ['left.axis', '200'],
    ['right.thickness', '0'],
    ['left.pd', 'wide'],
  ])('is refused where no lens can be: %s as %s', (key, text) => {
    const { measured, wrong } = readMeasured(single, { ...powers, [key]: text }, 0);
    expect([measured, wrong.map((one) => one.key)]).toEqual([null, [key]]);
  });

  it('needs an axis for a cylinder', () => {
    const { wrong } = readMeasured(single, { ...powers, 'right.cylinder': '-0.75' }, 0);
    expect(wrong.map(({ key }) => key)).toEqual(['right.axis']);
  });

  it('has base in towards the nose of each eye', () => {
    const typed = {
      'right.across': '1',
      'left.across': '1',
      'left.upright': '2',
      'left.uprightBase': 'down',
    };
    const { measured } = readMeasured(single, { ...powers, ...typed }, 0);
    expect([measured?.right.prism, measured?.left.prism]).toEqual([
      { x: 1, y: 0 },
      { x: -1, y: -2 },
    ]);
  });

  it('counts by the powers that the supplier states, where there are any', () => {
    const pair = {
      'right.sphere': '-3',
      'right.cylinder': '-0.5',
      'right.axis': '170',
      'left.sphere': '-2.75',
    };
    const stated = {
      'right.stated-sphere': '-3',
      'right.stated-cylinder': '-0.5',
      'right.stated-axis': '170',
    };
    const power = (draft: Record<string, string>) => {
      const { measured } = readMeasured(single, draft, 0);
      const found = measured && inspectPair(single, measured, shop);
      return found?.inspection.items.find(({ item, eye }) => item === 'power' && eye === 'right')?.outcome;
    };
    expect([power(pair), power({ ...pair, ...stated })]).toEqual(['fail', 'pass']);
  });

  it('belongs to one pair of the order', () => {
    expect(pairDraft({ '0.right.sphere': '1', '10.right.sphere': '2', '1.by': 'M' }, 1)).toEqual({ by: 'M' });
  });
});

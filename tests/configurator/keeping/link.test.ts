import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choicesOf } from '../../../src/configurator/choices.ts';
import { type Entries, FIELDS, type Field } from '../../../src/configurator/fields.ts';
import { isLink, readLink, writeLink } from '../../../src/configurator/keeping/link.ts';
import { fieldOfKey, keyOf } from '../../../src/configurator/keeping/linkKeys.ts';
import { holdPair, isPrivate, isTerms, privatePart } from '../../../src/configurator/keeping/parts.ts';
import { shopData } from '../../../src/configurator/shopData.ts';
import { DATE, frameOf, shop } from '../shop.ts';
import { anyEntries, anyPackage } from './arbitraries.ts';

const data = shopData(shop);

/** What a link says, which must be one of ours. */
function said(fragment: string) {
  const link = readLink(fragment);
  if (link === null || !link.ok) throw new Error(`This is no link: ${fragment}`);
  return link;
}

describe('a link', () => {
  it('read back gives the same package', () => {
    fc.assert(
      fc.property(fc.constantFrom(...shop.frames), anyPackage, anyEntries, (frame, chosen, typed) => {
        const entries: Entries = { ...privatePart(typed), ...chosen };
        const choices = choicesOf(entries, frame, data, DATE);
        const link = said(writeLink(holdPair(frame.id, entries, choices), false));
        const { wearer: _, ...read } = choicesOf(link.entries, frame, data, DATE);
        expect({ ...read, wearer: choices.wearer }).toEqual(choices);
      }),
    );
  });

  it('holds no field of prescription, measurements or wearer without the tick', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const fragment = writeLink({ entries }, false);
        const link = said(fragment);
        expect(Object.keys(link.entries).filter((field) => isPrivate(field as Field))).toEqual([]);
        expect(link.personal).toBe(false);
        const keys = fragment.split(';').map((part) => part.split('=')[0] ?? '');
        expect(keys.filter((key) => isPrivate(fieldOfKey(key) ?? 'use'))).toEqual([]);
        // Nor do the private entries move what is written by anything at all.
        const without = Object.fromEntries(
          Object.entries(entries).filter(([field]) => !isPrivate(field as Field)),
        );
        expect(writeLink({ entries: without }, false)).toBe(fragment);
      }),
    );
  });

  it('holds every entry of the pair with the tick, and never the terms of an order', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const own = Object.fromEntries(Object.entries(entries).filter(([field]) => !isTerms(field as Field)));
        expect(said(writeLink({ entries }, true)).entries).toEqual(own);
      }),
    );
  });

  it('is plain text that a message leaves whole', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        expect(writeLink({ entries }, true)).toMatch(/^p1(?:;[A-Za-z.]+=[A-Za-z0-9%._-]*[A-Za-z0-9%_-])*$/);
      }),
    );
  });

  it('takes no harm from what anybody writes', () => {
    const hostile = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc
        .array(fc.tuple(fc.constantFrom(...FIELDS.map(keyOf)), fc.string({ unit: 'binary' })))
        .map((parts) => parts.map(([key, value]) => `${key}=${value}`).join(';')),
    );
    fc.assert(
      fc.property(hostile, (text) => {
        const link = said(`#p1;${text}`.slice(0, 5000));
        for (const [field, value] of Object.entries(link.entries)) {
          expect(FIELDS).toContain(field);
          expect(value).not.toMatch(/\p{Cc}/u);
          expect(value.length).toBeLessThanOrEqual(200);
        }
      }),
    );
  });

  it('names each field once', () => {
    expect(new Set(FIELDS.map(keyOf)).size).toBe(FIELDS.length);
    for (const field of FIELDS) expect(fieldOfKey(keyOf(field))).toBe(field);
  });

  it.each([
    ['#p1;zz=1', { part: 'zz=1', why: 'unknown' }],
    ['#p1;codes=FIRSTPAIR', { part: 'codes=FIRSTPAIR', why: 'unknown' }],
    ['#p1;__proto__=1', { part: '__proto__=1', why: 'unknown' }],
    ['#p1;m', { part: 'm', why: 'unknown' }],
    ['#p1;m=%E0%A4%A', { part: 'm=%E0%A4%A', why: 'unreadable' }],
    ['#p1;m=', { part: 'm=', why: 'unreadable' }],
    ['#p1;m=%00', { part: 'm=%00', why: 'unreadable' }],
    ['#p1;u=all;u=near', { part: 'u=near', why: 'twice' }],
    [`#p1;m=${'x'.repeat(201)}`, { part: `m=${'x'.repeat(38)}…`, why: 'too-long' }],
  ])('says what it leaves out of %s', (fragment, left) => {
    expect(said(fragment).leftOut).toEqual([left]);
  });

  it('tells of eight parts that it leaves out, and counts the rest', () => {
    const { leftOut, more } = said(`#p1${';x1=1'.repeat(1000)}`);
    expect([leftOut.length, more]).toEqual([8, 992]);
  });

  it('of another version or without end is refused as a whole', () => {
    expect(readLink('#p2;m=x')).toEqual({ ok: false, why: 'version' });
    expect(readLink(`#p1;m=${'x'.repeat(7000)}`)).toEqual({ ok: false, why: 'too-long' });
  });

  it.each(['', '#', '#worksheet', '#price', '#p', '#p1x', '#pair-1'])('is not what %j means', (fragment) => {
    expect(isLink(fragment)).toBe(false);
    expect(readLink(fragment)).toBeNull();
  });

  it('of a whole prescription stays short enough to be read out', () => {
    const frame = frameOf('sanderling');
    const entries: Entries = {
      'right.sphere': '-3.25',
      'right.cylinder': '-0.75',
      'right.axis': '170',
      'left.sphere': '-2.75',
      'pd.right': '31.5',
      'pd.left': '32',
    };
    const pair = holdPair(frame.id, entries, choicesOf(entries, frame, data, DATE));
    expect(writeLink(pair, false)).toMatchInlineSnapshot(
      `"p1;u=distance;z=48-19;y=kelp;d=single-vision;m=standard-plastic;t=clear;k=none"`,
    );
    expect(writeLink(pair, true)).toMatchInlineSnapshot(
      `"p1;w=adult;u=distance;z=48-19;y=kelp;d=single-vision;m=standard-plastic;t=clear;k=none;rs=-3.25;rc=-0.75;ra=170;ri=31.5;ls=-2.75;li=32"`,
    );
  });
});

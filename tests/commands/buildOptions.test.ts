import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readBuildOptions } from '../../src/commands/buildOptions.ts';

describe('the options of a build', () => {
  it('go into the environment, and all others to Astro', () => {
    const args = [
      'build',
      '--date',
      '2026-12-06',
      '--verbose',
      '--base=/shop/',
      '--shop',
      'tests/',
      '--out',
      'x',
    ];
    expect(readBuildOptions(args)).toEqual({
      rest: ['build', '--verbose'],
      env: {
        ...{ BEVELBOOK_DATE: '2026-12-06', BEVELBOOK_BASE: '/shop/' },
        ...{ BEVELBOOK_SHOP: resolve('tests'), BEVELBOOK_OUT: resolve('x') },
      },
    });
  });

  it.each([
    [['--date', '2026-02-30'], '--date: expected a day of the calendar as YYYY-MM-DD, found "2026-02-30".'],
    [['--date'], '--date: expected a value, found "".'],
    [['--base', 'shop'], '--base: expected a path such as /shop/, with a slash at both ends, found "shop".'],
    [
      ['--base', '//host/'],
      '--base: expected a path such as /shop/, with a slash at both ends, found "//host/".',
    ],
    [['--shop', 'nowhere'], '--shop: expected a folder of content, found "nowhere".'],
  ])('%j is refused with what is expected', (args, fault) => {
    expect(readBuildOptions(args)).toEqual({ fault });
  });
});

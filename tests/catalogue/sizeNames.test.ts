import { describe, expect, it } from 'vitest';
import { inLanguage } from '../../src/catalogue/languages.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { sizeName, sizeNameOf } from '../../src/catalogue/sizeNames.ts';

const reading = loadCatalogue('content');

describe('what a size is called', () => {
  it('is its id where that is figures alone, else figures and words of the language', () => {
    const called = (language: string) => {
      const shop = reading.ok ? inLanguage(reading, language) : undefined;
      const ruff = shop?.frames.find(({ id }) => id === 'ruff');
      return ruff?.sizes.map(sizeName);
    };
    expect(called('en')).toEqual(['49-20 saddle', '49-20 keyhole']);
    expect(called('fr-CA')).toEqual(['49-20 pont en selle', '49-20 pont en clé']);
  });

  it('leaves every name that is a figure alone, and an id that the frame does not have', () => {
    const sizes = [{ id: '51-19' }, { id: '49-20-deep', name: '49-20 deep' }] as never;
    expect(sizeNameOf({ sizes }, '51-19')).toBe('51-19');
    expect(sizeNameOf({ sizes }, '49-20-deep')).toBe('49-20 deep');
    expect(sizeNameOf({ sizes }, '44-20')).toBe('44-20');
  });
});

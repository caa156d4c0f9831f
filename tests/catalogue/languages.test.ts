import { describe, expect, it } from 'vitest';
import { languageSegment, pageHref } from '../../src/catalogue/languages.ts';

describe('the addresses of a language', () => {
  it.each([
    ['en', ['en', 'fr-CA'], undefined],
    ['fr-CA', ['en', 'fr-CA'], 'fr'],
    ['fr-CA', ['en', 'fr-CA', 'fr-FR'], 'fr-ca'],
    ['fr-FR', ['en', 'fr-CA', 'fr-FR'], 'fr-fr'],
    ['en-GB', ['en-US', 'en-GB'], 'en-gb'],
  ])('of %s among %s begin with %s', (language, languages, segment) => {
    expect(languageSegment(language, languages)).toBe(segment);
  });

  it('are those of the first language below the language', () => {
    expect(pageHref({ path: '' }, '/basket/')).toBe('/basket/');
    expect(pageHref({ path: '/fr' }, '/basket/')).toBe('/fr/basket/');
  });
});

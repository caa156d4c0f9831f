/** Reports that pages of several frames and languages share. */
import { expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { openingOf } from '../../src/configurator/opening.ts';
import { reportsIn, reportsText } from '../../src/islands/alikeReports.ts';

const reading = loadCatalogue('content');
const [own, ...others] = reading.ok ? [reading.catalogue, ...reading.translations] : [];
const date = '2026-11-25';

it('gives each frame in each language the reports that are made for it', () => {
  expect(others.length).toBeGreaterThan(0);
  if (own === undefined) return;
  for (const catalogue of [own, ...others])
    for (const frame of catalogue.frames) {
      const { reports } = openingOf(catalogue, frame, date, (make) =>
        reportsIn(catalogue, own, frame.id, make),
      );
      const made = openingOf(catalogue, frame, date).reports;
      expect(reports).toEqual(made);
      expect(JSON.parse(reportsText(reports))).toEqual(made);
    }
});

/** The complete samples of README, asked through the demo shop. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { answerSchema } from '../../src/quote/answerSchema.ts';
import { quote } from '../../src/quote/quote.ts';
import { readRequest } from '../../src/quote/requestSchema.ts';

const folder = new URL('../fixtures/requests/', import.meta.url);
const loaded = loadCatalogue('content');
if (!loaded.ok) throw new Error('The demo shop has faults: npm run check lists them.');
const { catalogue } = loaded;

const expected: Readonly<Record<string, string>> = {
  'distance.json': 'makeable',
  'long-corridor.json': 'refused',
  'two-pairs.json': 'makeable',
};

describe('a sample request', () => {
  it.each(readdirSync(folder))('%s is answered by the demo shop', (file) => {
    const read = readRequest(JSON.parse(readFileSync(new URL(file, folder), 'utf8')), '2026-11-25');
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const reply = quote(catalogue, read.request);
    if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
    answerSchema.parse(JSON.parse(JSON.stringify(reply.answer)));
    expect(reply.answer.verdict).toBe(expected[file]);
  });
});

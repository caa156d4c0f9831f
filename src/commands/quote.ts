/**
 * `npm run -s quote -- FILE.json` (or `-` for standard input): one request in, JSON out. Exit status 0 for makeable
 * and care, 2 for refused, 1 for wrong input. `--schema request|answer|faults` prints the JSON Schema of that part.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { civilDateAt } from '../catalogue/civilDate.ts';
import { inLanguage } from '../catalogue/languages.ts';
import { loadCatalogue } from '../catalogue/load.ts';
import { printFaults } from '../catalogue/printFaults.ts';
import { quoteWithAdvice } from '../quote/advice.ts';
import type { Reply } from '../quote/answer.ts';
import type { Fault } from '../quote/fault.ts';
import { jsonSchema, SCHEMA_PARTS } from '../quote/jsonSchema.ts';
import { withMeant } from '../quote/names.ts';
import { asWritten, readRequest } from '../quote/requestSchema.ts';

const USAGE =
  'npm run -s quote -- FILE.json, or - for standard input; --shop FOLDER for another content folder; ' +
  '--schema request, answer or faults for a JSON Schema';

function fault(message: string, expected: string, found: string): Reply {
  return { ok: false, faults: [{ path: '(command line)', message, expected, found }] };
}

function readText(file: string): string | Fault {
  try {
    // A file from a text editor may begin with a byte-order mark, which JSON does not allow.
    return readFileSync(file === '-' ? 0 : file, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    return {
      path: '(command line)',
      message: 'The request cannot be read.',
      expected: 'a file of JSON, or - for standard input',
      found: error instanceof Error ? error.message : String(error),
    };
  }
}

function readJson(text: string): { readonly json: unknown } | Fault {
  try {
    return { json: JSON.parse(text) };
  } catch (error) {
    return {
      path: '(whole request)',
      message: 'This is not JSON.',
      expected: 'one JSON object: a request with pairs, or one package',
      found: error instanceof Error ? error.message : String(error),
    };
  }
}

interface CommandLine {
  readonly values: { readonly shop?: string | undefined; readonly schema?: string | undefined };
  readonly positionals: readonly string[];
}

function readCommandLine(): CommandLine | Reply {
  try {
    const options = { shop: { type: 'string' }, schema: { type: 'string' } } as const;
    return parseArgs({ options, allowPositionals: true });
  } catch (error) {
    return fault('An option is not known.', USAGE, error instanceof Error ? error.message : String(error));
  }
}

function answer({ values, positionals }: CommandLine): Reply {
  const [file, ...rest] = positionals;
  if (file === undefined || rest.length > 0)
    return fault('One request is read at a time.', USAGE, `${positionals.length} files`);
  const text = readText(file);
  if (typeof text !== 'string') return { ok: false, faults: [text] };
  const read = readJson(text);
  if (!('json' in read)) return { ok: false, faults: [read] };
  const loaded = loadCatalogue(values.shop ?? 'content');
  if (!loaded.ok) {
    console.error(printFaults(loaded.faults));
    return fault(
      'The shop itself has faults.',
      'a shop that passes npm run check',
      `${loaded.faults.length} faults`,
    );
  }
  const today = civilDateAt(Date.now(), loaded.catalogue.shop.timeZone);
  const request = readRequest(read.json, today, loaded.catalogue);
  if (!request.ok) return request;
  const offer = inLanguage(loaded, request.request.language);
  if (offer === undefined) return unspoken(loaded.catalogue.shop.languages, request.request.language);
  const reply = quoteWithAdvice(offer, request.request);
  if (reply.ok) return reply;
  return { ok: false, faults: asWritten(read.json, withMeant(offer, request.request, reply.faults)) };
}

/** A language that the shop does not have. */
function unspoken(languages: readonly string[], found = ''): Reply {
  const message = 'The shop does not speak this language.';
  return { ok: false, faults: [{ path: 'language', message, expected: languages.join(' or '), found }] };
}

/** A fault as it is published: in one language, without what a page tells it by. */
const published = ({ path, message, expected, found }: Fault): Fault => ({ path, message, expected, found });

function print(reply: Reply): void {
  const told = reply.ok ? reply.answer : { faults: reply.faults.map(published) };
  console.log(JSON.stringify(told, null, 2));
  process.exitCode = !reply.ok ? 1 : reply.answer.verdict === 'refused' ? 2 : 0;
}

const line = readCommandLine();
if ('ok' in line) print(line);
else if (line.values.schema === undefined) print(answer(line));
else {
  const schema = jsonSchema(line.values.schema);
  if (schema === null) print(fault('There is no such schema.', SCHEMA_PARTS.join(', '), line.values.schema));
  else console.log(JSON.stringify(schema, null, 2));
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printFault } from '../../../src/catalogue/printFaults.ts';
import { type CsvForm, readCsv } from '../../../src/commands/importing/csv.ts';

const usual: CsvForm = { separator: null, encoding: 'utf-8' };
const encode = (text: string) => new TextEncoder().encode(text);

function read(text: string | Uint8Array, form: CsvForm = usual) {
  const done = readCsv('list.csv', typeof text === 'string' ? encode(text) : text, form);
  if (!done.ok) return done.faults.map(printFault).join('\n\n');
  const { headings, rows } = done.csv;
  return { headings, rows: rows.map(({ line, cells }) => [line, ...cells]) };
}

describe('a CSV file', () => {
  it.each([
    ['commas', 'id,price\na,1.50\n'],
    ['semicolons', 'id;price\na;1.50\n'],
    ['tabs', 'id\tprice\na\t1.50\n'],
    ['CRLF and a byte-order mark', '\uFEFFid,price\r\na,1.50\r\n'],
    ['quotes and spaces', '"id", "price"\n "a" ,1.50'],
  ])('is read with %s', (_, text) => {
    expect(read(text)).toEqual({ headings: ['id', 'price'], rows: [[2, 'a', '1.50']] });
  });

  it('counts lines over empty ones and over cells of several lines', () => {
    expect(read('id,text\n\na,"one\ntwo"\n\n,\nb,"say ""so"", he said"\n')).toEqual({
      headings: ['id', 'text'],
      rows: [
        [3, 'a', 'one\ntwo'],
        [7, 'b', 'say "so", he said'],
      ],
    });
  });

  it('of an old spreadsheet is read in its own encoding, and refused in another', () => {
    const bytes = Uint8Array.from('id;name\na;Grün\n', (letter) => letter.charCodeAt(0));
    expect(read(bytes, { separator: ';', encoding: 'windows-1252' })).toMatchObject({
      rows: [[2, 'a', 'Grün']],
    });
    expect(read(bytes)).toContain(
      'Save it as "CSV UTF-8", or write encoding: windows-1252 into the mapping.',
    );
  });

  it('is refused with the line where it is broken', () => {
    expect(read('id,price\na,1\nb,"2\n')).toMatchInlineSnapshot(`
      "list.csv:3:1 this is not a well-formed CSV file [csv-syntax]
        3 | b,"2
          | ^^^^
        expected: cells with quotes at both ends or none, quotes inside written twice
        found:    a quote that is never closed
        to do:    Close it, or remove it."
    `);
    expect(read('id,price\na,1,5\nb,2\nc\n')).toMatchInlineSnapshot(`
      "list.csv:2:1 this is not a well-formed CSV file [csv-syntax]
        2 | a,1,5
          | ^
        expected: 2 cells, one for each heading
        found:    3
        to do:    Put cells that hold the separator in quotes.

      list.csv:4:1 this is not a well-formed CSV file [csv-syntax]
        4 | c
          | ^
        expected: 2 cells, one for each heading
        found:    1
        to do:    Put cells that hold the separator in quotes."
    `);
    expect(read('id,id\na,1\n')).toContain('headings that differ');
    expect(read('id,price\n')).toContain('a row of headings and a row below it');
    expect(read('id,price\na,x"y\n')).toContain('list.csv:2:1');
  });

  it('law: what is written by RFC 4180 is read back, each row with its line', () => {
    const cell = fc
      .string({ unit: fc.constantFrom('a', 'é', ',', ';', '"', '\n', ' x', '0') })
      .map((text) => text.trim());
    const table = fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 8 });
    const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
    fc.assert(
      fc.property(table, fc.constantFrom('\n', '\r\n'), (rows, eol) => {
        const kept = rows.filter(([a, b]) => a !== '' || b !== '');
        fc.pre(kept.length > 0);
        let line = 2;
        const expected = kept.map(([a, b]) => {
          const at = line;
          line += 1 + (a + b).split('\n').length - 1;
          return [at, a, b];
        });
        const text = [['h', 'i'], ...kept].map((row) => row.map(quoted).join(';')).join(eol);
        expect(read(`${text}${eol}`, { ...usual, separator: ';' })).toEqual({
          headings: ['h', 'i'],
          rows: expected,
        });
      }),
    );
  });
});

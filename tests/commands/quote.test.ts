import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';

const run = (args: readonly string[], input = '') => {
  const { stdout, status } = spawnSync(process.execPath, ['src/commands/quote.ts', ...args], {
    input,
    encoding: 'utf8',
  });
  return { status, json: JSON.parse(stdout) };
};

describe('quote in the terminal', () => {
  it('exits with 0 for what can be made and 2 for what is refused, and prints JSON either way', () => {
    const made = run(['tests/fixtures/requests/distance.json']);
    expect([made.status, made.json.verdict]).toEqual([0, 'makeable']);
    const refused = run(['tests/fixtures/requests/long-corridor.json']);
    expect([refused.status, refused.json.verdict]).toEqual([2, 'refused']);
  });

  it.each([
    ['a file that is not there', ['nowhere.json'], '', '(command line)'],
    ['no file', [], '', '(command line)'],
    ['an unknown option', ['--fast'], '', '(command line)'],
    ['text that is not JSON', ['-'], '{ "frame": ', '(whole request)'],
    ['an empty input', ['-'], '', '(whole request)'],
    ['a request for nothing', ['-'], '{}', 'pairs'],
    ['another shop that is not there', ['-', '--shop', 'nowhere'], '{ "pairs": [] }', '(command line)'],
  ])('exits with 1 for %s, with faults as JSON', (_, args, input, path) => {
    const { status, json } = run(args, input);
    expect(status).toBe(1);
    expect(json.faults[0]).toMatchObject({
      path,
      message: expect.any(String),
      expected: expect.any(String),
      found: expect.any(String),
    });
  });

  it('prints a JSON Schema of what it takes and gives', () => {
    expect(run(['--schema', 'request']).json.properties.pairs.type).toBe('array');
    expect(run(['--schema', 'answer']).json.required).toContain('verdict');
    expect(run(['--schema', 'faults']).json.required).toEqual(['faults']);
  });

  it('reads a file that begins with a byte-order mark', () => {
    expect(run(['-'], '\uFEFF{}').json.faults[0].path).toBe('pairs');
  });
});

import { expect, it, vi } from 'vitest';
import { inTurn, outOfTurn } from '../../src/islands/inTurn.ts';

/** Draws by the frames of a page that draws nothing by itself. */
function frames() {
  const asked: (() => void)[] = [];
  vi.stubGlobal('requestAnimationFrame', (then: () => void) => asked.push(then));
  return async () => {
    for (const then of asked.splice(0)) then();
    await new Promise((done) => setTimeout(done, 5));
  };
}

it('draws the verdict before the rest, each part once, and what lays out long in a frame of its own', async () => {
  const frame = frames();
  const drawn: string[] = [];
  const part = (name: string) => () => void drawn.push(name);
  const [table, gone] = [part('table'), part('gone')];
  for (const alone of ['card', 'other card']) inTurn(part(alone), 'alone');
  for (const next of [table, part('list'), table, gone]) inTurn(next, 'next');
  inTurn(part('verdict'), 'first');
  outOfTurn(gone);
  await frame();
  expect(drawn).toEqual(['verdict', 'table', 'list', 'card']);
  await frame();
  expect(drawn.at(-1)).toBe('other card');
  // What comes while a frame is waited for goes before what has waited longer.
  inTurn(part('late'), 'next');
  inTurn(part('verdict again'), 'first');
  await frame();
  expect(drawn.slice(5)).toEqual(['verdict again', 'late']);
  vi.unstubAllGlobals();
});

it('draws a page that is not shown and has no frames', async () => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
  const drawn: string[] = [];
  for (const name of ['one', 'two']) inTurn(() => drawn.push(name), 'alone');
  await vi.waitFor(() => expect(drawn).toEqual(['one', 'two']));
  vi.unstubAllGlobals();
});

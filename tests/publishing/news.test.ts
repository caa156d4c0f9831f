import { expect, it } from 'vitest';
import type { ListedFrame } from '../../src/catalogue/frame.ts';
import { newFrames, newsOf } from '../../src/publishing/news.ts';

const frame = (model: string, added: string | null, changed: string | null) =>
  ({ id: model.toLowerCase(), model, added, changed }) as ListedFrame;

const frames = [
  frame('Avocet', '2026-01-01', '2026-03-01'),
  frame('Knot', '2026-03-01', null),
  frame('Ruff', '2026-02-02', '2026-02-02'),
  frame('Stint', '2026-04-01', null),
  frame('Tern', null, null),
];

it('tells the last thing of each frame, the newest first, nothing before its day', () => {
  expect(newsOf(frames, '2026-03-31', 9).map((n) => `${n.frame.model} ${n.kind} ${n.day}`)).toEqual([
    'Avocet changed 2026-03-01',
    'Knot added 2026-03-01',
    'Ruff added 2026-02-02',
  ]);
  // Before the change, the frame was new.
  expect(newsOf(frames, '2026-02-28', 9).map(({ kind }) => kind)).toEqual(['added', 'added']);
  expect(newsOf(frames, '2026-04-01', 1).map((n) => n.frame.model)).toEqual(['Stint']);
});

it('lists new frames by the day they were added', () => {
  expect(newFrames(frames, '2026-03-31', 9).map(({ model }) => model)).toEqual(['Knot', 'Ruff', 'Avocet']);
});

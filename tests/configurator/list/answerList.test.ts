import { describe, expect, it } from 'vitest';
import { type ListTold, listAnswerer } from '../../../src/configurator/list/answerList.ts';
import { shopData } from '../../../src/configurator/shopData.ts';
import { frameJudge } from '../../../src/quote/frameList.ts';
import { receiveFrame, sendFrame } from '../../../src/quote/frameListData.ts';
import type { ListRequest } from '../../../src/quote/frameListRequest.ts';
import { DATE, shop } from '../shop.ts';

const asked: ListRequest = {
  date: DATE,
  wearer: null,
  use: 'distance',
  prescription: { right: { sphere: -3 }, left: { sphere: -3 } },
  fit: { pd: 63 },
};
const sent = shop.frames.map(sendFrame);
const ANY = { widthFromMm: null, widthToMm: null, colour: null };

/** What is told until everything asked is answered, a part a frame. */
async function heard(ask: (answerer: ReturnType<typeof listAnswerer>) => Promise<unknown>) {
  const told: ListTold[] = [];
  await ask(listAnswerer(shopData(shop), sent, (one) => told.push(one), 0));
  return told;
}

describe('the list in parts', () => {
  it('answers each frame once, in order, as the judge of one frame does', async () => {
    const told = await heard((answer) => answer(1, asked, ANY));
    const judge = frameJudge(shopData(shop), asked);
    expect(told.length).toBeGreaterThan(1);
    expect(told.flatMap(({ listed }) => listed)).toEqual(
      sent.map((frame) => ({ frame: frame.id, answer: judge(receiveFrame(frame)) })),
    );
    expect(told.map(({ done }) => done)).toEqual(told.map((_, i) => i === told.length - 1));
  });

  it('leaves an older request where a newer one comes', async () => {
    const told = await heard((answer) => Promise.all([answer(1, asked, ANY), answer(2, asked, ANY)]));
    expect(told.filter(({ serial }) => serial === 1).every(({ done }) => !done)).toBe(true);
    expect(told.at(-1)).toMatchObject({ serial: 2, done: true });
  });

  it('answers null where a frame has nothing within the limits', async () => {
    const told = await heard((answer) => answer(1, asked, { ...ANY, widthFromMm: 99 }));
    expect(told.flatMap(({ listed }) => listed).every(({ answer }) => answer === null)).toBe(true);
  });
});

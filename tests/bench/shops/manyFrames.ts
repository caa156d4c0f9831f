/** Writes a content folder of many frames: those of the demonstration shop, then others like them. */
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument, stringify } from 'yaml';

interface Size {
  id: string;
  a: number;
  b: number;
  dbl: number;
  ed: number;
  readonly outline: { readonly family?: string };
}
interface Front {
  model: string;
  price: string;
  sizes: Size[];
  notOffered?: { size: string }[];
  readonly pictures?: unknown;
  readonly [field: string]: unknown;
}

/** The n-th frame like this one: wider and higher by steps, so that a large shop has some hundred different sizes. */
function like(front: Front, round: number): Front {
  const wider = round % 5;
  const higher = Math.floor(round / 5) % 4;
  const named = new Map<string, string>();
  const sizes = front.sizes.map((size) => {
    if (size.outline.family === undefined) return size;
    const [a, b] = [size.a + wider, size.b + (wider * size.b) / size.a + higher / 2];
    const [width, ...rest] = size.id.split('-');
    const id = [Number(width) + wider, ...rest].join('-');
    named.set(size.id, id);
    const ed = size.ed * (a / size.a) + higher / 4;
    return { ...size, id, a, b: Math.round(b * 10) / 10, ed: Math.round(ed * 10) / 10 };
  });
  const notOffered = (front.notOffered ?? []).map((one) => ({
    ...one,
    size: named.get(one.size) ?? one.size,
  }));
  const price = (Number(front.price) + (round % 7) * 5).toFixed(2);
  // Ids that the demonstration's frames once had are theirs alone.
  const { formerIds: _, ...rest } = front;
  return {
    ...rest,
    model: `${front.model} ${round + 1}`,
    price,
    sizes,
    ...(notOffered.length > 0 ? { notOffered } : {}),
  };
}

/** Fills `folder` with a shop of `count` frames. Photographs are left out: encoding them says nothing about pages. */
export function writeManyFrames(folder: string, count: number): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  cpSync('content', folder, { recursive: true });
  const frames = join(folder, 'frames');
  const all = readdirSync(frames)
    .filter((name) => name.endsWith('.md'))
    .map((name) => {
      const [, yaml = '', body = ''] =
        /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(join(frames, name), 'utf8')) ?? [];
      const { pictures: _, ...front } = parseDocument(yaml).toJS() as Front;
      return { id: name.slice(0, -3), front: front as Front, body };
    });
  const write = (id: string, front: Front, body: string) =>
    writeFileSync(join(frames, `${id}.md`), `---\n${stringify(front)}---\n${body}`);
  for (const { id, front, body } of all) write(id, front, body);
  for (let at = all.length; at < count; at += 1) {
    const base = all[at % all.length];
    if (base === undefined) return;
    const round = Math.floor(at / all.length);
    write(`${base.id}-${round + 1}`, like(base.front, round), base.body);
  }
}

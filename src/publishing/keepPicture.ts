/** Makes a PNG of an SVG text and keeps it in .cache by its content, so that a second build makes none again. */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import sharp from 'sharp';

const FOLDER = '.cache/share';

/** Part of the name: raise it when the way of making changes. */
const MADE = 1;

function kept(path: string): Buffer | null {
  try {
    return readFileSync(path);
  } catch {
    return null;
  }
}

/** The PNG of an SVG text, in 64 colours. The same text gives the same bytes with the same release of sharp. */
export async function pngOf(svg: string): Promise<Uint8Array<ArrayBuffer>> {
  const digest = createHash('sha256').update(`${MADE} ${sharp.versions.vips} ${svg}`).digest('hex');
  const path = `${FOLDER}/${digest.slice(0, 32)}.png`;
  const found = kept(path);
  if (found !== null) return new Uint8Array(found);
  const png = await sharp(Buffer.from(svg))
    .png({ palette: true, colours: 64, effort: 1, dither: 0 })
    .toBuffer();
  mkdirSync(FOLDER, { recursive: true });
  // Whole or not at all: builds may run beside each other.
  const partial = `${path}.${process.pid}`;
  writeFileSync(partial, png);
  renameSync(partial, path);
  return new Uint8Array(png);
}

/** The frames that advice may lead to, one file for each group of them; a file's name changes with its content. */
import { createHash } from 'node:crypto';
import { catalogue } from 'virtual:bevelbook/catalogue';
import type { Frame } from '../catalogue/frame.ts';
import { frameGroup, packFrame } from '../configurator/framePack.ts';

interface FrameFile {
  /** The first part of the content's digest. */
  readonly digest: string;
  readonly text: string;
}

function fileOf(frames: readonly Frame[]): FrameFile {
  const text = JSON.stringify(frames.map(packFrame));
  return { digest: createHash('sha256').update(text).digest('hex').slice(0, 16), text };
}

const groups = Map.groupBy(catalogue.frames, frameGroup);
const files = new Map([...groups].map(([group, frames]) => [group, fileOf(frames)]));

/** Every file, once. */
export const frameFiles: readonly FrameFile[] = [...files.values()];

/** Where the frames lie that may stand in for this one, itself among them. */
export const frameFileOf = (frame: Frame): string =>
  `/other-frames/${files.get(frameGroup(frame))?.digest}.json`;

/** The frames that advice may lead to, one file for each group of them; a file's name changes with its content. */
import { catalogue } from 'virtual:bevelbook/catalogue';
import { bareFrame, type Frame, type ListedFrame } from '../catalogue/frame.ts';
import { frameGroup, packFrame } from '../configurator/framePack.ts';
import { contentDigest } from './contentDigest.ts';

interface FrameFile {
  readonly digest: string;
  readonly text: string;
}

async function fileOf(frames: readonly ListedFrame[]): Promise<FrameFile> {
  const text = JSON.stringify(frames.map((frame) => packFrame(bareFrame(frame))));
  return { digest: await contentDigest(text), text };
}

const groups = Map.groupBy(catalogue.frames, frameGroup);
const files = new Map(
  await Promise.all([...groups].map(async ([group, frames]) => [group, await fileOf(frames)] as const)),
);

/** Every file, once. */
export const frameFiles: readonly FrameFile[] = [...files.values()];

/** Where the frames lie that may stand in for this one, itself among them. */
export const frameFileOf = (frame: Frame): string =>
  `/other-frames/${files.get(frameGroup(frame))?.digest}.json`;

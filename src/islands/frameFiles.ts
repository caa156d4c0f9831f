/** The frames that advice may lead to, one file for each group of them and each language. */
import { bareFrame, type Frame } from '../catalogue/frame.ts';
import { spoken } from '../components/shopWords.ts';
import { frameGroup, packFrame } from '../configurator/framePack.ts';
import { type DataFile, dataFile } from './dataFile.ts';

const files = new Map<string, DataFile>();
for (const { catalogue } of spoken)
  for (const [group, frames] of Map.groupBy(catalogue.frames, frameGroup))
    files.set(
      `${catalogue.shop.language} ${group}`,
      await dataFile(JSON.stringify(frames.map((frame) => packFrame(bareFrame(frame))))),
    );

export const frameFiles: readonly DataFile[] = [...files.values()];

/** Where the frames lie that may stand in for this one in a language, itself among them. */
export const frameFileOf = (frame: Frame, language: string): string =>
  `/other-frames/${files.get(`${language} ${frameGroup(frame)}`)?.digest}.json`;

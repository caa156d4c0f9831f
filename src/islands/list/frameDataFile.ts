/** The frames for the list's engine as one file; its name changes with its content. */
import { createHash } from 'node:crypto';
import { catalogue } from 'virtual:bevelbook/catalogue';
import { sendFrame } from '../../quote/frameListData.ts';

export const frameDataText: string = JSON.stringify(catalogue.frames.map(sendFrame));

/** The first part of the content's digest. */
export const frameDataDigest: string = createHash('sha256').update(frameDataText).digest('hex').slice(0, 16);

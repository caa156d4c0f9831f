/** The frames for the list's engine as one file; its name changes with its content. */
import { catalogue } from 'virtual:bevelbook/catalogue';
import { sendFrame } from '../../quote/frameListData.ts';
import { contentDigest } from '../contentDigest.ts';

export const frameDataText: string = JSON.stringify(catalogue.frames.map(sendFrame));

export const frameDataDigest: string = await contentDigest(frameDataText);

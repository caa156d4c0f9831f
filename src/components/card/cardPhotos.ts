/** The photographs that stand for frames in lists, in small sizes. */
import { getImage } from 'astro:assets';
import type { FramePicture, ListedFrame } from '../../catalogue/frame.ts';
import { pictureSource } from '../pictureSource.ts';
import { spoken } from '../shopWords.ts';

/** Widths that are made, pixels: a card, and the same for screens of twice the density. */
const WIDTHS = [400, 800];

interface CardPhoto {
  readonly src: string;
  readonly width: number;
  readonly height: number;
  /** For browsers that know none of the modern formats. */
  readonly srcset: string;
  /** Modern formats, the smallest first. */
  readonly sources: readonly { readonly type: string; readonly srcset: string }[];
}

/** By the name of the file. */
export type CardPhotos = ReadonlyMap<string, CardPhoto>;

/** The picture that stands for a frame; its drawing does where there is none. */
export const firstPicture = ({ pictures }: ListedFrame): FramePicture | undefined => pictures[0];

let made: Promise<CardPhotos> | undefined;

/** Those of all frames, made once for all pages: a frame stands on many. */
export function cardPhotos(): Promise<CardPhotos> {
  made ??= makeAll();
  return made;
}

async function makeAll(): Promise<CardPhotos> {
  const first = spoken[0]?.catalogue.frames.flatMap((frame) => firstPicture(frame) ?? []) ?? [];
  return new Map(await Promise.all(first.map(async (one) => [one.file, await photoOf(one)] as const)));
}

async function photoOf(picture: FramePicture): Promise<CardPhoto> {
  const plain = await pictureSource(picture);
  const widths = WIDTHS.filter((one) => one <= plain.width);
  const width = widths[0] ?? plain.width;
  const make = (format: string) =>
    getImage({ src: plain.source, format, width, widths: widths.length > 0 ? widths : [width] });
  const [avif, webp, jpg] = await Promise.all(['avif', 'webp', 'jpg'].map(make));
  const srcsetOf = (image: typeof jpg) => image?.srcSet.attribute ?? '';
  return {
    src: jpg?.src ?? '',
    width,
    height: Math.round((width * plain.height) / plain.width),
    srcset: srcsetOf(jpg),
    sources: [
      { type: 'image/avif', srcset: srcsetOf(avif) },
      { type: 'image/webp', srcset: srcsetOf(webp) },
    ],
  };
}

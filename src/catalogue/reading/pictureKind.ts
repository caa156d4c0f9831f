/** What a picture's file is, by its name and by its first bytes. Nothing is decoded here. */

/** Where photographs of frames lie, from the content folder. */
export const PICTURES = 'frames/pictures';

/** Kinds that browsers show and that the build can make smaller, with the endings of their files. */
const ENDINGS = { jpeg: ['jpg', 'jpeg'], png: ['png'], webp: ['webp'], avif: ['avif'] } as const;

export type PictureKind = keyof typeof ENDINGS;

/** A picture as far as it is looked into here. */
export interface PictureFile {
  /** As faults name it. */
  readonly path: string;
  /** Its name in content/frames/pictures. */
  readonly name: string;
  /** What it is by its first bytes; null: no picture that browsers show. */
  readonly found: PictureKind | null;
  readonly sizeBytes: number;
}

export const PICTURE_NAME = /^[a-z0-9]+(?:-[a-z0-9]+)*\.(?:jpe?g|png|webp|avif)$/;
export const PICTURE_NAME_SAID =
  'a name of small letters a-z, digits and hyphens, then .jpg, .jpeg, .png, .webp or .avif';

/** As many first bytes as `pictureKind` looks at. */
export const PICTURE_HEAD_BYTES = 32;

/** Whether a path, from anywhere above the content folder, leads into the folder of pictures. */
export const isPicturePath = (path: string): boolean => path.includes(`/${PICTURES}/`);

/** The kind that a file's name says; null: none. */
export function kindOfName(name: string): PictureKind | null {
  const ending = name.slice(name.lastIndexOf('.') + 1);
  const kinds = Object.keys(ENDINGS) as PictureKind[];
  return kinds.find((kind) => (ENDINGS[kind] as readonly string[]).includes(ending)) ?? null;
}

/** The kind that a file's first bytes say (each format's own signature); null: none of these. */
export function pictureKind(head: Uint8Array): PictureKind | null {
  const text = String.fromCharCode(...head.subarray(0, PICTURE_HEAD_BYTES));
  if (text.startsWith('\xff\xd8\xff')) return 'jpeg';
  if (text.startsWith('\x89PNG\r\n\x1a\n')) return 'png';
  if (text.startsWith('RIFF') && text.slice(8, 12) === 'WEBP') return 'webp';
  return text.slice(4, 8) === 'ftyp' && /avi[fs]/.test(text.slice(8)) ? 'avif' : null;
}

/** The files of photographs, as astro:assets knows them. */
import type { ImageMetadata } from 'astro';
import type { FramePicture } from '../catalogue/frame.ts';

const files = import.meta.glob<{ default: ImageMetadata }>(
  '/content/frames/pictures/*.{jpg,jpeg,png,webp,avif}',
);

/** What astro:assets makes a photograph's variants of, and its own size in pixels. */
export async function pictureSource({ file }: FramePicture) {
  const load = files[`/content/frames/pictures/${file}`];
  if (load === undefined) throw new Error(`The picture ${file} is not there.`);
  const { default: source } = await load();
  // Astro publishes the file itself, with all that the camera wrote into it, once a page reads anything of it but this.
  const { width, height } = (source as { readonly clone?: ImageMetadata }).clone ?? source;
  return { source, width, height };
}

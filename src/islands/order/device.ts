/** What the browser does with an order file. */
import type { Device } from '../../configurator/order/delivering.ts';
import type { OrderFile } from '../../configurator/order/madeFile.ts';

/** Name of the one field that a file is posted in. */
const POSTED_AS = 'order';
/** A slow line takes minutes for the pictures of a prescription. */
const LONGEST_POST_MS = 300_000;
/** Until then a browser may still be reading what it was handed. */
const READING_MS = 60_000;

const fileOf = ({ name, type, bytes }: OrderFile): File => new File([bytes], name, { type });

function follow(href: string, download?: string): void {
  const link = document.createElement('a');
  link.href = href;
  if (download !== undefined) link.download = download;
  document.body.append(link);
  link.click();
  link.remove();
}

/** Whether this browser shares files of text. */
export const canShare = (): boolean =>
  typeof navigator.canShare === 'function' &&
  navigator.canShare({ files: [new File(['-'], 'order.json.txt', { type: 'text/plain' })] });

export const device: Device = {
  isOnline: () => navigator.onLine,
  save: (file) => {
    const address = URL.createObjectURL(fileOf(file));
    follow(address, file.name);
    setTimeout(() => URL.revokeObjectURL(address), READING_MS);
  },
  openMail: (link) => follow(link),
  share: async (file) => {
    try {
      await navigator.share({ files: [fileOf(file)] });
      return 'shared';
    } catch (error) {
      const name = error instanceof Error ? error.name : '';
      if (name === 'AbortError') return 'cancelled';
      // The press that asked for it is too long ago.
      return name === 'NotAllowedError' && !navigator.userActivation?.isActive ? 'again' : 'unshared';
    }
  },
  post: async (address, file) => {
    const body = new FormData();
    body.append(POSTED_AS, fileOf(file));
    try {
      const response = await fetch(address, {
        method: 'POST',
        body,
        credentials: 'omit',
        referrerPolicy: 'no-referrer',
        cache: 'no-store',
        redirect: 'error',
        signal: AbortSignal.timeout(LONGEST_POST_MS),
      });
      return response.status;
    } catch {
      return null;
    }
  },
};

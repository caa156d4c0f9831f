/** The ways in which an order file leaves the page, and what the shopper is told of each. */
import type { Delivery } from '../../catalogue/orderTerms.ts';
import type { Gone } from './keptOrder.ts';
import type { OrderFile } from './madeFile.ts';

/** What the browser does with a file. */
export interface Device {
  readonly isOnline: () => boolean;
  /** Hands it to the downloads; whether it is written there is never told. */
  readonly save: (file: OrderFile) => void;
  readonly openMail: (link: string) => void;
  /** `again`: the browser wants another press, since making the file took too long. */
  readonly share: (file: OrderFile) => Promise<'shared' | 'cancelled' | 'unshared' | 'again'>;
  /** The status of the answer; null: none came. */
  readonly post: (address: string, file: OrderFile) => Promise<number | null>;
}

/** What became of one try; its sentence is `orderPage.state.<code>`. */
export interface Outcome {
  readonly code: Gone['how'] | 'cancelled' | 'unshared' | 'again' | 'refused' | 'unanswered' | 'offline';
  /** Status of a refusal. */
  readonly status: number;
}

interface Load {
  readonly file: OrderFile;
  /** The same as text; null: too large. */
  readonly text: () => Promise<OrderFile | null>;
  /** Link of the mail that asks to attach it. */
  readonly mail: string;
  readonly postTo: string | null;
}

/** Sends a file in one way. Never rejects for what the device or the network does. */
export async function deliver(device: Device, way: Delivery, load: Load): Promise<Outcome> {
  const told = (code: Outcome['code'], status = 0): Outcome => ({ code, status });
  if (way === 'share') {
    const text = await load.text();
    return told(text === null ? 'unshared' : await device.share(text));
  }
  if (way === 'post') return post(device, load);
  device.save(load.file);
  if (way === 'save') return told('saved');
  device.openMail(load.mail);
  return told('mailed');
}

async function post(device: Device, { file, postTo }: Load): Promise<Outcome> {
  if (!device.isOnline() || postTo === null) return { code: 'offline', status: 0 };
  const status = await device.post(postTo, file);
  if (status === null) return { code: 'unanswered', status: 0 };
  return { code: status >= 200 && status < 300 ? 'posted' : 'refused', status };
}

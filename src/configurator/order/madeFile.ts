/** An order as the file that leaves the page. */
import type { Words } from '../../catalogue/catalogue.ts';
import type { Shop } from '../../catalogue/shop.ts';
import { loadMaking, loadSealing, loadSizes, type OrderDraft, type OrderingShop } from './orderParts.ts';

export interface OrderFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export interface MadeFile {
  readonly file: OrderFile;
  readonly sealed: boolean;
  /** SHA-256 of the order before it was sealed. */
  readonly digest: string;
  /** Link of the mail that asks to attach it. */
  readonly mail: string;
}

export interface Maker {
  readonly shop: OrderingShop & Pick<Shop, 'contact'>;
  readonly words: Words;
}

/** The file of a whole draft. Rejects where it cannot be sealed: none is made then. */
export async function makeFile(maker: Maker, draft: OrderDraft): Promise<MadeFile> {
  const { publicKeys } = maker.shop.order;
  const { makeOrder, orderBytes, orderFileName, digestOf, mailLink } = await loadMaking();
  const plain = orderBytes(makeOrder(maker, draft));
  const sealed = publicKeys.length > 0;
  const [bytes, digest] = await Promise.all([
    sealed ? (await loadSealing()).seal(plain, publicKeys) : plain,
    digestOf(plain),
  ]);
  return {
    file: {
      name: orderFileName(draft.number, sealed),
      type: sealed ? 'application/octet-stream' : 'application/json',
      bytes: new Uint8Array(bytes),
    },
    sealed,
    digest,
    mail: mailLink(maker, draft.number, sealed),
  };
}

/** Has what makes a file there before it is asked for: by then the device may be offline. */
export async function prepareMaking({ order: { publicKeys } }: OrderingShop): Promise<void> {
  await loadMaking();
  // The library loads with the first seal.
  if (publicKeys.length > 0) await (await loadSealing()).seal(new Uint8Array(1), publicKeys);
}

/**
 * The same order as a file of text: browsers share no other kind that fits. null where it would be larger than the
 * workroom reads.
 */
export async function asText({ file, sealed }: MadeFile): Promise<OrderFile | null> {
  const [{ armour }, { sizeRefusal }] = await Promise.all([loadSealing(), loadSizes()]);
  const bytes = sealed ? new Uint8Array(await armour(file.bytes)) : file.bytes;
  return sizeRefusal(bytes.length) === null ? { name: `${file.name}.txt`, type: 'text/plain', bytes } : null;
}

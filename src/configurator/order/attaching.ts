/** Pictures and PDFs chosen for a pair: read, looked at, and taken or told why not. */
import type { Files } from './draftOf.ts';
import { type Attachment, loadAttaching, type OrderParts } from './orderParts.ts';

/** A file as the browser hands it over. */
export type ChosenFile = Pick<File, 'name' | 'size' | 'arrayBuffer'>;

/** Why a file was not taken; its sentence is `order.attachment.<code>`, or `orderPage.attachMany` and so on. */
export interface NotAttached {
  readonly name: string;
  readonly code: 'empty' | 'type' | 'too-large' | 'many' | 'unread';
}

type Limits = Pick<OrderParts, 'MOST_ATTACHED_BYTES' | 'MOST_ATTACHMENTS'>;

/** Bytes of an attachment by the length of its base64. */
export const sizeOf = ({ base64 }: Attachment): number =>
  (base64.length / 4) * 3 - (base64.endsWith('==') ? 2 : base64.endsWith('=') ? 1 : 0);

/** Bytes of all files of an order together. */
const takenBytes = (files: Files): number =>
  Object.values(files)
    .flat()
    .reduce((sum, file) => sum + sizeOf(file), 0);

/** The file as an attachment beside those that there are, or why it is none. A file too large is not read. */
export async function readChosen(
  { MOST_ATTACHED_BYTES, MOST_ATTACHMENTS }: Limits,
  files: Files,
  id: number,
  chosen: ChosenFile,
): Promise<Attachment | NotAttached['code']> {
  const taken = takenBytes(files);
  if ((files[id]?.length ?? 0) >= MOST_ATTACHMENTS) return 'many';
  if (taken + chosen.size > MOST_ATTACHED_BYTES) return 'too-large';
  try {
    const { attach } = await loadAttaching();
    return attach(chosen.name, new Uint8Array(await chosen.arrayBuffer()), taken);
  } catch {
    return 'unread';
  }
}

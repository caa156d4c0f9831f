/**
 * What reads order files, with the library that opens sealed ones. All of it is loaded as the page starts: once an order
 * is open, the page asks for nothing more.
 */
export async function loadOrders() {
  const [reading, refusals, keys, seals, sizes, letters, ends, age] = await Promise.all([
    import('../../order/readOrder.ts'),
    import('../../order/refusal.ts'),
    import('../../order/identities.ts'),
    import('../../order/seal.ts'),
    import('../../order/plainBytes.ts'),
    import('../../order/base64.ts'),
    import('../../order/attachment.ts'),
    import('age-encryption'),
  ]);
  return {
    readOrder: reading.readOrder,
    refusal: refusals.refusal,
    refusalText: refusals.refusalText,
    readIdentities: keys.readIdentities,
    isSealed: seals.isSealed,
    seal: seals.seal,
    unseal: seals.unseal,
    /** The public half of a private key. */
    recipientOf: age.identityToRecipient,
    sizeRefusal: sizes.sizeRefusal,
    toBase64: letters.toBase64,
    fromBase64: letters.fromBase64,
    attachmentEnds: ends.ATTACHMENT_ENDS,
  };
}

export type Orders = Awaited<ReturnType<typeof loadOrders>>;

/** An order as read. */
export type ReadFile = Extract<Awaited<ReturnType<Orders['readOrder']>>, { ok: true }>;

import { expect, test } from 'vitest';
import { priceOrder } from '../../src/pricing/priceOrder.ts';
import { asked, offer, pair } from './offer.ts';

test('a pair is listed line by line, with shipping and tax', () => {
  const reply = priceOrder(offer, [pair], asked);
  if (!reply.ok) throw new Error(JSON.stringify(reply.faults));
  expect(reply.order.lines).toMatchInlineSnapshot(`
    [
      {
        "amount": 14900,
        "kind": "frame",
        "label": "Frame Dunlin",
        "pair": 0,
        "source": "frames/dunlin",
      },
      {
        "amount": 6000,
        "kind": "lenses",
        "label": "Lens design: Single vision",
        "pair": 0,
        "source": "lenses/designs/single",
      },
      {
        "amount": 0,
        "kind": "lenses",
        "label": "Lens material: Standard plastic 1.50",
        "pair": 0,
        "source": "lenses/materials/standard",
      },
      {
        "amount": 0,
        "kind": "option",
        "label": "Tint: Clear",
        "pair": 0,
        "source": "lenses/tints/clear",
      },
      {
        "amount": 3500,
        "kind": "option",
        "label": "Coating: Anti-reflective",
        "pair": 0,
        "source": "lenses/coatings/quiet",
      },
      {
        "amount": 650,
        "kind": "shipping",
        "label": "Parcel in Maine",
        "pair": null,
        "source": "shop",
      },
      {
        "amount": 1342,
        "kind": "tax",
        "label": "Maine sales tax, 5.5% of $244.00",
        "pair": null,
        "source": "shop",
      },
    ]
  `);
  expect(reply.order.totalMinor).toBe(14900 + 6000 + 3500 + 650 + 1342);
});

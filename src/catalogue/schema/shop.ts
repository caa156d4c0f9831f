/** What content/shop.yaml holds. */
import * as z from 'zod/mini';
import {
  fields,
  flag,
  id,
  list,
  type MoneyFields,
  number,
  oneOf,
  orElse,
  text,
  textLike,
  whole,
} from './fields.ts';
import { percent } from './money.ts';
import { orderTerms } from './orderTerms.ts';
import { workroomSchema } from './workroom.ts';

const PLACE = /^(?:[A-Z]{2}(?:-[A-Z0-9]{1,3})?|\*)$/;

function place() {
  return textLike(PLACE, 'a country such as US, a part of it such as US-ME, or "*" for anywhere else');
}

function habits() {
  return fields({
    /** How long a prescription is accepted, months. */
    prescriptionMonths: whole(1, 120, 'months'),
    /** Added to the diameter of the smallest blank for edging, mm. */
    blankAllowanceMm: number(0, 10, 'mm'),
    /** Largest difference of base curve between the eyes of a pair, D. */
    baseCurveDifferenceD: number(0, 10, 'D'),
    /** Strongest meridian from which a vertex distance is asked for, D. */
    vertexFromD: number(0, 40, 'D'),
    /** Strongest meridian from which the pair is fitted in person, D. */
    inPersonFromD: number(0, 40, 'D'),
    /** Ordered prism of one eye from which the pair is fitted in person, prism dioptres. */
    inPersonPrism: number(0, 20, 'prism dioptres'),
    /** Difference of spherical equivalents from which the pair is fitted in person, D. */
    anisometropiaFromD: number(0, 20, 'D'),
    /** Assumed where not measured, degrees. */
    pantoscopicTiltDeg: number(-10, 30, 'degrees'),
    /** Assumed where not measured, mm. */
    vertexDistanceMm: number(5, 25, 'mm'),
    /** Distance that near lenses are made for, mm. Default 400. */
    nearDistanceMm: orElse(number(200, 1000, 'mm'), 400),
    /** Share of the add in an intermediate lens. Default 0.5. */
    intermediateAddShare: orElse(number(0, 1), 0.5),
    /** Optical centre of single vision on the measured `pupil`, or `lowered-for-tilt`. Default `pupil`. */
    singleVisionHeight: orElse(oneOf(['pupil', 'lowered-for-tilt'] as const), 'pupil'),
    /** Face form or tilt from which the power as worn is compensated, degrees. Default 10. */
    compensateFromDeg: orElse(number(0, 45, 'degrees'), 10),
    /** Edge from which a lens is not glazed, mm. Default 14. */
    mostEdgeMm: orElse(number(3, 40, 'mm'), 14),
    /** Optical centre above the boxed centre where nothing was measured, mm. */
    datumAboveCentreMm: number(-10, 10, 'mm'),
    /** Edge beyond the rim from which the shopper is told, mm. */
    beyondRimFromMm: number(0, 20, 'mm'),
    /** Mass of both lenses from which the shopper is told, g. */
    heavyFromG: number(1, 200, 'g'),
    /** Prism over Abbe number at 30 degrees of gaze from which colour fringes are named, prism dioptres. */
    fringesFrom: number(0, 5, 'prism dioptres'),
  });
}

function shippingRate(money: MoneyFields) {
  return z.pipe(
    fields({ destinations: list(place(), 1), label: text(), amount: money.price }),
    z.transform(({ amount, ...rest }) => ({ ...rest, amountMinor: amount })),
  );
}

function taxRate() {
  return z.pipe(
    fields({
      destinations: list(place(), 1),
      label: text(),
      percent: percent(),
      /** What the tax is taken on. */
      on: list(oneOf(['frame', 'lenses', 'shipping']), 1),
    }),
    z.transform(({ percent: ratePpm, ...rest }) => ({ ...rest, ratePpm })),
  );
}

/** Schema of the shop; whether Intl knows its currency, zone and language is checked besides. */
export function shopSchema(money: MoneyFields) {
  return fields({
    name: text(),
    tagline: text(),
    /** Absolute address of the published site, without a slash at its end. */
    address: textLike(
      /^https?:\/\/[^\s/?#]+(?:\/[^\s?#]*[^\s/?#])?$/,
      'an address such as https://shop.example, without a slash at its end',
    ),
    /** Language of the shop's texts, such as en: the folder below words. */
    language: textLike(/^[a-z]{2,3}(?:-[A-Za-z0-9]+)*$/, 'a language such as en'),
    /** ISO 4217 code; all prices are in it. */
    currency: textLike(/^[A-Z]{3}$/, 'a currency of three capital letters, such as USD'),
    /** IANA name; promotions begin and end by its calendar. */
    timeZone: text('a time zone such as America/New_York'),
    /** Destination of a quote that names none. */
    destination: textLike(
      /^[A-Z]{2}(?:-[A-Z0-9]{1,3})?$/,
      'a country such as US, or a part of it such as US-ME',
    ),
    contact: fields({
      /** Postal address, line by line. */
      lines: list(text(), 1),
      email: textLike(/^[^\s@]+@[^\s@]+\.[^\s@]+$/, 'an e-mail address'),
      phone: text(),
    }),
    /** The seller's own statement of licence. */
    licence: text(),
    habits: habits(),
    /** Places that the shop sends to. */
    shipping: list(shippingRate(money), 1),
    /** Default none. */
    tax: orElse(list(taxRate()), []),
    /** Grounds on which no tax is added. Default none. */
    exemptions: orElse(
      list(fields({ id: id(), label: text(), reason: text(), destinations: list(place(), 1) })),
      [],
    ),
    /** How orders come in. */
    order: orderTerms(),
    /** How the workroom works. Everything in it may be left out. */
    workroom: workroomSchema(),
    /** Whether lenses are offered for a frame that the shopper already has. Default no. */
    ownFrame: orElse(flag(), false),
    /** Groups of frames. */
    collections: list(fields({ id: id(), name: text(), summary: text() }), 1),
  });
}

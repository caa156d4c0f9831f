/** What content/shop.yaml holds. */
import { about } from './about.ts';
import { place, shippingRate, taxRate } from './destinations.ts';
import {
  fields,
  flag,
  id,
  language,
  list,
  type MoneyFields,
  number,
  oneOf,
  orElse,
  text,
  textLike,
  whole,
} from './fields.ts';
import { orderTerms } from './orderTerms.ts';
import { priceHabitsSchema } from './priceHabits.ts';
import { workroomSchema } from './workroom.ts';

function habits() {
  return fields({
    prescriptionMonths: about('How long a prescription is accepted, months.', whole(1, 120, 'months')),
    blankAllowanceMm: about(
      'Added to the diameter of the smallest blank for edging, mm.',
      number(0, 10, 'mm'),
    ),
    baseCurveDifferenceD: about(
      'Largest difference of base curve between the eyes of a pair, D.',
      number(0, 10, 'D'),
    ),
    vertexFromD: about(
      'Strongest meridian from which a vertex distance is asked for, D.',
      number(0, 40, 'D'),
    ),
    inPersonFromD: about(
      'Strongest meridian from which the pair is fitted in person, D.',
      number(0, 40, 'D'),
    ),
    inPersonPrism: about(
      'Ordered prism of one eye, or between two that both have some, from which the pair is fitted in person, prism dioptres.',
      number(0, 20, 'prism dioptres'),
    ),
    anisometropiaFromD: about(
      'Difference of spherical equivalents from which the pair is fitted in person, D.',
      number(0, 20, 'D'),
    ),
    pantoscopicTiltDeg: about('Assumed where not measured, degrees.', number(-10, 30, 'degrees')),
    vertexDistanceMm: about('Assumed where not measured, mm.', number(5, 25, 'mm')),
    nearDistanceMm: about(
      'Distance that near lenses are made for, mm. Default 400.',
      orElse(number(200, 1000, 'mm'), 400),
    ),
    intermediateAddShare: about(
      'Share of the add in an intermediate lens. Default 0.5.',
      orElse(number(0, 1), 0.5),
    ),
    singleVisionHeight: about(
      'Optical centre of single vision on the measured `pupil`, or `lowered-for-tilt`. Default `pupil`.',
      orElse(oneOf(['pupil', 'lowered-for-tilt'] as const), 'pupil'),
    ),
    compensateFromDeg: about(
      'Face form or tilt from which the power as worn is compensated, degrees. Default 10.',
      orElse(number(0, 45, 'degrees'), 10),
    ),
    mostEdgeMm: about(
      'Edge from which a lens is not glazed, mm. Default 14.',
      orElse(number(3, 40, 'mm'), 14),
    ),
    datumAboveCentreMm: about(
      'Optical centre above the boxed centre where nothing was measured, mm.',
      number(-10, 10, 'mm'),
    ),
    beyondRimFromMm: about('Edge beyond the rim from which the shopper is told, mm.', number(0, 20, 'mm')),
    heavyFromG: about('Mass of both lenses from which the shopper is told, g.', number(1, 200, 'g')),
    leastSharpAngleDeg: about(
      'Sharp-view angle of a single vision lens below which the shopper is told, degrees. Default 15.',
      orElse(number(0, 35, 'degrees'), 15),
    ),
    fringesFrom: about(
      'Prism over Abbe number at 30 degrees of gaze from which colour fringes are named, prism dioptres.',
      number(0, 5, 'prism dioptres'),
    ),
  });
}

/** Schema of one collection. */
export function collection() {
  return fields({
    id: about('What frames name it by.', id(), 'harbour'),
    name: about('Name that the shopper reads.', text(), 'Harbour'),
    summary: about('One sentence for lists.', text()),
  });
}

/** Schema of the shop; whether Intl knows its currency, zone and language is checked besides. */
export function shopSchema(money: MoneyFields) {
  return fields({
    name: about('Name of the shop.', text(), 'Merriwick Optical Workshop'),
    tagline: about('One sentence below the name.', text()),
    address: about(
      'Absolute address of the published site, without a slash at its end.',
      textLike(
        /^https?:\/\/[^\s/?#]+(?:\/[^\s?#]*[^\s/?#])?$/,
        'an address such as https://shop.example, without a slash at its end',
      ),
    ),
    language: about("Language of the shop's texts, such as en: the folder below words.", language()),
    otherLanguages: about(
      'Further languages, such as fr-CA: each has a folder below words and below translations. Default none.',
      orElse(list(language()), []),
      ['fr-CA'],
    ),
    currency: about(
      'ISO 4217 code; all prices are in it.',
      textLike(/^[A-Z]{3}$/, 'a currency of three capital letters, such as USD'),
    ),
    timeZone: about(
      'IANA name; promotions begin and end by its calendar.',
      text('a time zone such as America/New_York'),
    ),
    destination: about(
      'Destination of a quote that names none.',
      textLike(/^[A-Z]{2}(?:-[A-Z0-9]{1,3})?$/, 'a country such as US, or a part of it such as US-ME'),
    ),
    places: about(
      'What parts of countries are called; countries are known by name. Default: their codes.',
      orElse(
        list(
          fields({
            code: about('As ISO 3166 writes it.', textLike(/^[A-Z]{2}-[A-Z0-9]{1,3}$/, 'such as US-ME')),
            name: about('What the shopper reads.', text(), 'Maine'),
          }),
        ),
        [],
      ),
    ),
    contact: about(
      'How the shop is reached.',
      fields({
        lines: about('Postal address, line by line.', list(text(), 1)),
        email: about(
          'Shown on every page.',
          textLike(/^[^\s@]+@[^\s@]+\.[^\s@]+$/, 'an e-mail address'),
          'bench@shop.example',
        ),
        phone: about('Shown on every page.', text(), '207-555-0142'),
      }),
    ),
    licence: about("The seller's own statement of licence.", text()),
    habits: about('Figures by which the shop works.', habits()),
    shipping: about('Places that the shop sends to.', list(shippingRate(money), 1)),
    tax: about('Default none.', orElse(list(taxRate()), [])),
    exemptions: about(
      'Grounds on which no tax is added. Default none.',
      orElse(
        list(
          fields({
            id: about('What a request names it by.', id(), 'prescribed'),
            label: about('What the shopper chooses.', text()),
            reason: about('Printed below the price.', text()),
            destinations: about('Where it holds.', list(place(), 1), ['US-ME']),
          }),
        ),
        [],
      ),
    ),
    order: about('How orders come in.', orderTerms()),
    workroom: about('How the workroom works. Everything in it may be left out.', workroomSchema()),
    prices: about('What npm run prices holds prices to; never published.', priceHabitsSchema(money)),
    ownFrame: about(
      'Whether lenses are offered for a frame that the shopper already has. Default no.',
      orElse(flag(), false),
    ),
    collections: about('Groups of frames.', list(collection(), 1)),
  });
}

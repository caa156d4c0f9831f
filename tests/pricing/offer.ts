/** A small offer of our own to price, and ways to change one thing of it. Figures are made up for the tests. */
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Offer, Words } from '../../src/catalogue/catalogue.ts';
import type { Coating } from '../../src/catalogue/coating.ts';
import type { Design } from '../../src/catalogue/design.ts';
import type { Frame } from '../../src/catalogue/frame.ts';
import type { Material, StockBlanks } from '../../src/catalogue/material.ts';
import type { Gift, Promotion, PromotionScope } from '../../src/catalogue/promotion.ts';
import type { Shop } from '../../src/catalogue/shop.ts';
import type { Tint } from '../../src/catalogue/tint.ts';
import type { Asked, PricedLenses, PricedPair } from '../../src/pricing/pair.ts';

function flat(value: unknown, path: string): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  return Object.entries(value as object).flatMap(([key, below]) =>
    flat(below, path ? `${path}.${key}` : key),
  );
}

const file = new URL('../../content/words/en/price.yaml', import.meta.url);
export const words: Words = Object.fromEntries(flat(parse(readFileSync(file, 'utf8')), ''));

const text = { summary: '', story: '', limits: [] };
const wide = { from: -20, to: 20 };

export const design: Design = {
  ...text,
  id: 'single',
  name: 'Single vision',
  priceMinor: 6000,
  kind: 'single-vision',
  uses: ['distance'],
  materials: ['standard'],
  sphereD: wide,
  cylinderD: 6,
  addD: null,
  prism: 10,
  faceFormDeg: 30,
  corridor: null,
  segment: null,
  surcharges: [{ label: 'prism above 3', of: 'prism', above: 3, upTo: null, priceMinor: 1500 }],
};

export const material: Material = {
  ...text,
  id: 'standard',
  name: 'Standard plastic 1.50',
  priceMinor: 0,
  nd: 1.498,
  ne: 1.5,
  abbe: 58,
  densityGPerCm3: 1.32,
  uvCutOffNm: 355,
  leastMm: { centre: 2, edge: 1, groove: 2, hole: null },
  mountings: ['full'],
  impactResistant: false,
  alwaysHardCoated: false,
  powerD: wide,
  stock: [],
  surfaced: null,
  surcharges: [
    { label: 'above 4.00 D', of: 'strongest-meridian', above: 4, upTo: 6, priceMinor: 1000 },
    { label: 'above 6.00 D', of: 'strongest-meridian', above: 6, upTo: null, priceMinor: 2500 },
  ],
};

export const stock: StockBlanks = {
  id: 'standard-65',
  diameterMm: 65,
  sphereD: wide,
  cylinderD: 2,
  stepD: 0.25,
  forms: [],
  coatings: ['hard'],
  tints: ['clear'],
  priceMinor: 4500,
};

export const tint: Tint = {
  ...text,
  id: 'clear',
  name: 'Clear',
  priceMinor: 0,
  kind: 'clear',
  polarised: false,
  mirrored: false,
  states: [],
  spectrum: null,
  materials: ['standard'],
  designs: ['single'],
};

export const coating: Coating = {
  ...text,
  id: 'quiet',
  name: 'Anti-reflective',
  priceMinor: 3500,
  faces: 'both',
  residualReflectance: 0.01,
  hard: true,
  materials: ['standard'],
  tints: ['clear'],
};

const part = { colour: '#333333', second: null, finish: 'solid' } as const;

export const frame: Frame = {
  id: 'dunlin',
  model: 'Dunlin',
  collection: 'harbour',
  summary: '',
  story: '',
  priceMinor: 14900,
  material: 'acetate',
  wearer: 'adult',
  sun: false,
  mounting: { kind: 'full' },
  rimDepthMm: 4,
  rimCoverMm: 0.5,
  faceFormDeg: 4,
  frameCurveD: 4,
  massG: 20,
  comesFitted: 'demo lenses',
  inTheBox: [],
  colourways: [
    {
      code: 'ink',
      name: 'Ink',
      front: part,
      bridge: part,
      temples: part,
      priceDifferenceMinor: 0,
      stock: 'in-stock',
    },
    {
      code: 'kelp',
      name: 'Kelp',
      front: part,
      bridge: part,
      temples: part,
      priceDifferenceMinor: 1200,
      stock: 'in-stock',
    },
  ],
  sizes: [
    {
      id: '49-19',
      aMm: 49,
      bMm: 40,
      dblMm: 19,
      edMm: 50,
      templeMm: 145,
      bridge: 'keyhole',
      outline: { origin: 'traced', family: null, radiiMm: [] },
      priceDifferenceMinor: 0,
    },
    {
      id: '46-19',
      aMm: 46,
      bMm: 38,
      dblMm: 19,
      edMm: 47,
      templeMm: 140,
      bridge: 'keyhole',
      outline: { origin: 'traced', family: null, radiiMm: [] },
      priceDifferenceMinor: -1000,
    },
  ],
  notOffered: [],
};

export const shop: Shop = {
  name: 'Shop',
  tagline: '',
  address: 'https://shop.example',
  language: 'en',
  languages: ['en'],
  path: '',
  currency: 'USD',
  currencyDigits: 2,
  timeZone: 'America/New_York',
  places: [],
  destination: 'US-ME',
  contact: { lines: [], email: '', phone: '' },
  licence: '',
  // Prices look at none of the workroom's habits.
  habits: {} as Shop['habits'],
  shipping: [
    { destinations: ['US'], label: 'Parcel in the United States', amountMinor: 950 },
    { destinations: ['US-ME'], label: 'Parcel in Maine', amountMinor: 650 },
    { destinations: ['*'], label: 'Parcel abroad', amountMinor: 2800 },
  ],
  tax: [
    { destinations: ['US-ME'], label: 'Maine sales tax', ratePpm: 55_000, on: ['frame', 'lenses'] },
    { destinations: ['US', '*'], label: 'No tax', ratePpm: 0, on: ['frame', 'lenses', 'shipping'] },
  ],
  exemptions: [{ id: 'resale', label: 'Resale', reason: 'bought to be sold again', destinations: ['US-ME'] }],
  order: { publicKeys: [], delivery: ['save'], postTo: null, consents: [], payments: [] },
  ownFrame: false,
};

export const offer: Offer = {
  shop,
  frames: [frame],
  designs: [design],
  materials: [material],
  tints: [tint],
  coatings: [coating],
  promotions: [],
  words,
};

export const everywhere: PromotionScope = {
  collections: null,
  frames: null,
  designs: null,
  materials: null,
  tints: null,
  coatings: null,
  leastGoodsMinor: null,
  leastPairs: 1,
};

/** A promotion that holds always and for everything, with what is given changed. */
export function promotion(id: string, gift: Gift, changed: Partial<Promotion> = {}): Promotion {
  const always = { starts: null, ends: null, code: null, scope: everywhere, joins: 'all' } as const;
  return { id, title: `Title ${id}`, sentence: `Sentence ${id}`, story: '', ...always, gift, ...changed };
}

export const lenses: PricedLenses = {
  design,
  material,
  tint,
  coating,
  stock: null,
  strongestMeridianD: -3.25,
  cylinderD: -0.75,
  prism: 0,
  addD: 0,
};

const [colourway, dearColourway] = frame.colourways;
const [size, smallSize] = frame.sizes;
if (!colourway || !dearColourway || !size || !smallSize) throw new Error('The frame has two of each.');

export const pair: PricedPair = { frame: { frame, size, colourway }, lenses };
/** In the colour that costs more and the size that costs less. */
export const otherPair: PricedPair = { frame: { frame, size: smallSize, colourway: dearColourway }, lenses };

export const asked: Asked = { date: '2026-11-25', destination: 'US-ME', taxExemption: null, codes: [] };

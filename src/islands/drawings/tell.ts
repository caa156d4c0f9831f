/** Words and figures of the drawings in the shop's language. */
import type { Slots } from '../../catalogue/words.ts';
import type { Eye } from '../../optics/types.ts';
import { placeOnLens } from '../../quote/shownPlace.ts';

/** A label or sentence of the worksheet; its key without the leading `worksheet.`. */
export type Words = (key: string, slots?: Slots) => string;

/** What the drawings speak with. */
export interface Tell {
  /** A label of the drawings; its key without the leading `drawing.`. */
  readonly d: Words;
  readonly eye: (eye: Eye) => string;
  readonly letter: (eye: Eye) => string;
  /** Between a name and what is told of it. */
  readonly colon: string;
  /** Between things told one after another. */
  readonly semicolon: string;
  /** A bare number with so many decimals; a true minus. */
  readonly number: (value: number, digits?: number) => string;
  /** Millimetres, to 0.01 unless told otherwise. */
  readonly mm: (value: number, digits?: number) => string;
  readonly deg: (value: number, digits?: number) => string;
  readonly gram: (value: number) => string;
  readonly prism: (value: number) => string;
  readonly percent: (value: number, digits: number) => string;
  /** Where on a lens an angle of the front view lies. */
  readonly place: (eye: Eye, atDeg: number) => string;
}

/** Labels in the words of a shop, numbers as its language writes them. */
export function teller(t: Words, language: string): Tell {
  const formats = new Map<number, Intl.NumberFormat>();
  const number = (value: number, digits = 2) => {
    let format = formats.get(digits);
    if (format === undefined) {
      format = new Intl.NumberFormat(language, {
        minimumFractionDigits: digits,
        maximumFractionDigits: digits,
      });
      formats.set(digits, format);
    }
    return format.format(value).replace('-', '\u2212');
  };
  const unit = (name: string) => `\u00a0${t(`unit.${name}`)}`;
  return {
    d: (key, slots) => t(`drawing.${key}`, slots),
    eye: (eye) => t(eye),
    letter: (eye) => t(`${eye}Letter`),
    colon: t('colon'),
    semicolon: t('semicolon'),
    number,
    mm: (value, digits = 2) => `${number(value, digits)}${unit('mm')}`,
    deg: (value, digits = 0) => `${number(value, digits)}${t('unit.degree')}`,
    gram: (value) => `${number(value, 1)}${unit('gram')}`,
    prism: (value) => `${number(value)}${unit('prism')}`,
    percent: (value, digits) => `${number(value, digits)}\u00a0%`,
    place: (eye, atDeg) => t(`place.${placeOnLens(eye, atDeg)}`),
  };
}

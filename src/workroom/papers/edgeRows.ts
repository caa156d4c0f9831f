/** Rows of the layout sheet that say how the edge is cut: bevel, groove or holes. */
import { bevelWidthMm } from '../../optics/bevel.ts';
import type { BevelPosition } from '../bevelPosition.ts';
import { millimetres } from '../figures.ts';
import type { EyeLayout, LaidHole } from '../layout.ts';
import { html, type Markup, type Part } from '../markup.ts';
import type { PaperContext } from './context.ts';
import type { Say } from './parts.ts';

/** The rows for the eyes' edges; all eyes of a pair are held in the same way. */
export function edgeRows({ t, offer }: PaperContext, eyes: readonly EyeLayout[]): (readonly Part[])[] {
  const [first] = eyes;
  if (first === undefined) return [];
  const { cut } = offer.workroom;
  const row = (label: string, cell: (eye: EyeLayout) => Part): Part[] => [
    label,
    ...eyes.map((eye) => cell(eye)),
  ];
  switch (first.edge.kind) {
    case 'bevel': {
      const form = {
        height: millimetres(cut.bevelHeightMm),
        angle: millimetres(cut.bevelAngleDeg),
        foot: millimetres(bevelWidthMm({ heightMm: cut.bevelHeightMm, angleDeg: cut.bevelAngleDeg })),
      };
      return [
        row(t('layout.bevel', form), ({ edge }) =>
          edge.kind !== 'bevel'
            ? ''
            : edge.position === null
              ? t('layout.rimUnknown')
              : bevelText(t, edge.position),
        ),
        row(t('layout.shows'), ({ edge }) =>
          edge.kind !== 'bevel' || edge.position === null ? '–' : showsText(t, edge.position),
        ),
      ];
    }
    case 'groove': {
      const form = { width: millimetres(cut.grooveWidthMm), depth: millimetres(cut.grooveDepthMm) };
      return [
        row(t('layout.groove', form), ({ edge }) =>
          edge.kind !== 'groove'
            ? ''
            : t(edge.missingMm > 0 ? 'layout.shoulderThin' : 'layout.shoulder', {
                percent: Math.round(edge.shareFromFront * 100),
                least: millimetres(edge.leastShoulderMm),
                at: Math.round(edge.atDeg) % 360,
              }),
        ),
      ];
    }
    case 'drill':
      return [row(t('layout.holes'), ({ edge }) => (edge.kind === 'drill' ? holesText(t, edge.holes) : ''))];
  }
}

function bevelText(t: Say, { bevel, meanPercent, placement }: BevelPosition): Markup {
  const follows = t(bevel.follows === 'curve' ? 'layout.onCurve' : 'layout.onShare', {
    percent: meanPercent,
  });
  const thin = placement.tooThin;
  const missing =
    thin && t('layout.tooThin', { missing: millimetres(thin.missingMm), at: Math.round(thin.atDeg) % 360 });
  return html`<b>${follows}</b>${missing !== null && html` ${missing}`}`;
}

function showsText(t: Say, { placement, hiddenPercent }: BevelPosition): string {
  const { mostInFront, mostBehind } = placement;
  const hidden = t('layout.hidden', { percent: hiddenPercent });
  const front =
    mostInFront.mm >= 0.05 &&
    t('layout.inFront', { mm: millimetres(round1(mostInFront.mm)), at: Math.round(mostInFront.atDeg) % 360 });
  const behind =
    mostBehind.mm >= 0.05 &&
    t('layout.behind', { mm: millimetres(round1(mostBehind.mm)), at: Math.round(mostBehind.atDeg) % 360 });
  return [hidden, front, behind].filter((one) => one !== false).join('; ');
}

const round1 = (mm: number) => Math.round(mm * 10) / 10;

function holesText(t: Say, holes: readonly LaidHole[]): Markup {
  const told = holes.map(({ side, fromBoxMm, upMm, heightMm, diameterMm, thicknessMm }) =>
    t('layout.hole', {
      side: t(`side.${side}`),
      box: millimetres(fromBoxMm),
      datum: `${upMm > 0 ? '+' : ''}${millimetres(upMm)}`,
      height: millimetres(heightMm),
      diameter: millimetres(diameterMm),
      thickness: millimetres(thicknessMm),
    }),
  );
  return html`${told.map((one, i) => html`${i > 0 && html`<br>`}${one}`)}`;
}

/** The table of the finished lenses, a column an eye. Loaded once there are any. */
import { writeDigits } from '../catalogue/words.ts';
import { EYES } from '../configurator/fields.ts';
import { writeLens, writePower } from '../configurator/write.ts';
import type { Eye } from '../optics/types.ts';
import type { LensAnswer } from '../quote/answer.ts';
import { shownPlace, shownPrism } from '../quote/shownPlace.ts';
import { useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';
import { useStore } from './useStore.ts';

export function LensTable() {
  const sheet = useSheet();
  const { t } = sheet;
  const [pair] = useStore(sheet.answer).pairs;
  const rows = useRows();
  const { right = null, left = null } = pair ?? {};
  const lenses = { right, left };
  const estimated = EYES.some((eye) => lenses[eye]?.estimate);
  return (
    <>
      <table class="ws-lenses">
        <caption>{t('ticket.figures')}</caption>
        <thead>
          <tr>
            <td />
            {EYES.map((eye) => (
              <th key={eye} scope="col">
                {t(eye)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows
            .map(({ label, of }) => ({
              label,
              cells: EYES.map((eye) => {
                const lens = lenses[eye];
                return lens && of(lens, eye);
              }),
            }))
            .filter(({ cells }) => cells.some((cell) => cell !== null))
            .map(({ label, cells: [first, second] }) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                <td>{first ?? t('figure.none')}</td>
                <td>{second ?? t('figure.none')}</td>
              </tr>
            ))}
        </tbody>
      </table>
      {estimated && <p class="ws-note">{t('ticket.estimate')}</p>}
    </>
  );
}

interface FigureRow {
  readonly label: string;
  readonly of: (lens: LensAnswer, eye: Eye) => string | null;
}

function useRows(): readonly FigureRow[] {
  const { t, data, chosen } = useSheet();
  const { corridor = null } = data.designs.find(({ id }) => id === chosen.design.get()) ?? {};
  const { mm, gram, dioptre } = useFigures();
  const power = (text: string) => writeDigits(data.words, text);
  const row = (key: string, of: FigureRow['of']): FigureRow => ({ label: t(`figure.${key}`), of });
  const edge = (eye: Eye, at: { readonly mm: number; readonly atDeg: number }) =>
    `${mm(at.mm)}, ${shownPlace(data.words, eye, at.atDeg)}`;
  const moved = (value: number, plus: string, minus: string) =>
    value === 0 ? null : t(`figure.${value > 0 ? plus : minus}`, { mm: mm(Math.abs(value)) });
  return [
    row('ordered', ({ ordered }) => power(writeLens(ordered))),
    row('orderedAdd', ({ ordered }) => (ordered.add === null ? null : power(writePower(ordered.add)))),
    row('orderedPrism', ({ ordered: { prism } }, eye) => prism && shownPrism(data.words, eye, prism)),
    ...(['compensated', 'wantedAsWorn'] as const).map((key) =>
      row(key, ({ compensated, blank: { kind } }) =>
        // A ready-made lens cannot follow: what it should be is told, and is not ordered.
        compensated && (kind === 'stock') === (key === 'wantedAsWorn') ? power(writeLens(compensated)) : null,
      ),
    ),
    row('compensatedPrism', ({ compensated }, eye) =>
      compensated?.prism ? shownPrism(data.words, eye, compensated.prism) : null,
    ),
    row('thickest', ({ edgeThicknessMm }, eye) => edge(eye, edgeThicknessMm.thickest)),
    row('thinnest', ({ edgeThicknessMm }, eye) => edge(eye, edgeThicknessMm.thinnest)),
    row('centre', ({ centreThicknessMm }) => mm(centreThicknessMm)),
    row('beyond', ({ beyondRimMm }) => mm(beyondRimMm)),
    row('mass', ({ massG }) => gram(massG)),
    row('baseCurve', ({ baseCurveD }) => dioptre(baseCurveD)),
    {
      label: corridor
        ? t('figure.decentrationPrism', { below: mm(corridor.referenceBelowCrossMm) })
        : t('figure.decentration'),
      of: ({ decentrationMm: { in: inwards, up } }) =>
        [moved(inwards, 'in', 'out'), moved(up, 'up', 'down')].filter((one) => one !== null).join(', ') ||
        mm(0),
    },
    row('blank', ({ blank: { kind, usedMm, neededMm } }) =>
      [
        usedMm === null ? null : t(`figure.${kind}`, { used: usedMm }),
        t('figure.needs', { needed: mm(neededMm) }),
      ]
        .filter((one) => one !== null)
        .join(', '),
    ),
  ];
}

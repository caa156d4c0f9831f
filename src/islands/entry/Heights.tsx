/** Where heights are measured on this frame: the lowest point of the lenses, and each pupil above it. On demand. */
import { sizeName } from '../../catalogue/sizeNames.ts';
import { writeDigits } from '../../catalogue/words.ts';
import { frameShape } from '../../components/drawing/frameDrawing.ts';
import { num } from '../../components/drawing/svgPath.ts';
import { type HeightMark, heightMarks } from '../../configurator/entry/heightMarks.ts';
import { isOwn } from '../../configurator/entry/ownFrame.ts';
import { drawnFrame } from '../../configurator/entry/ownSize.ts';
import { useSheet } from '../sheet.ts';
import { useStore } from '../useStore.ts';
import { PlainFront } from './PlainFront.tsx';
import { useSize } from './useSize.ts';

/** Room for the figures beside and below, mm. */
const MARGIN_MM = 12;

export function Heights() {
  const { t, frame, data, chosen, entries, read } = useSheet();
  const size = useSize();
  const designId = useStore(chosen.design);
  const now = useStore(entries);
  const fit = useStore(read).request.pairs[0]?.fit ?? {};
  if (size === null) return <p class="ws-note">{t('entry.heights.needsFrame')}</p>;
  const own = isOwn(frame);
  const shape = frameShape(own ? drawnFrame(now) : frame, size);
  const toLid = Boolean(data.designs.find(({ id }) => id === designId)?.segment);
  const marks = heightMarks(size, fit, toLid, data.shop.habits);
  const level = size.bMm / 2;
  const half = shape.halfWidthMm + 4;
  const top = shape.halfHeightMm + 4;
  const mm = (value: number) => writeDigits(data.words, `${Number(value.toFixed(1))} ${t('unit.mm')}`);
  const told = marks.map(({ eye, heightMm, given }) =>
    t(`entry.heights.${given ? 'eyeGiven' : 'eyeOpen'}`, {
      eye: t(eye),
      what: t(`entry.heights.${toLid ? 'lid' : 'pupil'}`),
      mm: mm(heightMm),
    }),
  );
  return (
    <figure class="en-figure">
      <p class="ws-note">{t('entry.heights.text')}</p>
      <svg
        class="en-drawing"
        viewBox={`${num(-half)} ${num(-top)} ${num(2 * half)} ${num(2 * top + MARGIN_MM)}`}
        role="img"
        aria-labelledby="en-heights-t"
        aria-describedby="en-heights-s"
      >
        <title id="en-heights-t">
          {own ? t('entry.heights.titleOwn') : t('entry.heights.title', { size: sizeName(size) })}
        </title>
        <PlainFront shape={shape} />
        <g class="dimension">
          <path d={`M${num(-half + 2)} ${num(level)}H${num(half - 2)}`} />
          {marks.map((mark) => (
            <Mark key={mark.eye} mark={mark} level={level} text={mm(mark.heightMm)} />
          ))}
          <text x={0} y={num(top + 6)}>
            {t('entry.heights.lowest')}
          </text>
        </g>
      </svg>
      <figcaption class="ws-note" id="en-heights-s">
        {t('entry.heights.describes')} {told.join(' ')}{' '}
        {t('entry.heights.box', { b: mm(size.bMm), middle: mm(level) })}
      </figcaption>
    </figure>
  );
}

/** A pupil or lid with its height above the lowest point. SVG places, mm, y down. */
function Mark({
  mark,
  level,
  text,
}: {
  readonly mark: HeightMark;
  readonly level: number;
  readonly text: string;
}) {
  const { xMm, heightMm, given } = mark;
  const y = level - heightMm;
  const side = Math.sign(xMm) || 1;
  const head = (at: number, down: number) => `M${num(xMm)} ${num(at)}l-0.9 ${num(2.6 * down)}h1.8z`;
  return (
    <g class={given ? 'en-mark' : 'en-mark en-open'}>
      <circle cx={num(xMm)} cy={num(y)} r="2" />
      <path d={`M${num(xMm - 4)} ${num(y)}h8M${num(xMm)} ${num(y - 4)}V${num(level)}`} />
      <path class="arrow" d={head(level, -1) + head(y + 2, 1)} />
      <text x={num(xMm + side * 9)} y={num((y + level) / 2 + 2)}>
        {text}
      </text>
    </g>
  );
}

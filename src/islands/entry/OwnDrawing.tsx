/** The shopper's own frame from the front, to scale, with its measurements. Loaded once they are there. */
import { writeDigits } from '../../catalogue/words.ts';
import { dimensions } from '../../components/drawing/dimension.ts';
import { frameShape } from '../../components/drawing/frameDrawing.ts';
import { num } from '../../components/drawing/svgPath.ts';
import { drawnFrame } from '../../configurator/entry/ownSize.ts';
import { useSheet } from '../sheet.ts';
import { useStore } from '../useStore.ts';
import { PlainFront } from './PlainFront.tsx';
import { useSize } from './useSize.ts';

export function OwnDrawing() {
  const { t, data, entries } = useSheet();
  const size = useSize();
  const now = useStore(entries);
  if (size === null) return null;
  const shape = frameShape(drawnFrame(now), size);
  const top = -(shape.halfHeightMm + 15);
  const height = 2 * shape.halfHeightMm + 28;
  const half = shape.halfWidthMm + 12;
  const mm = (value: number) => writeDigits(data.words, `${Number(value.toFixed(2))} ${t('unit.mm')}`);
  return (
    <svg
      class="en-drawing"
      viewBox={`${num(-half)} ${num(top)} ${num(2 * half)} ${num(height)}`}
      role="img"
      aria-labelledby="en-own-t"
      aria-describedby="en-own-s"
    >
      <title id="en-own-t">{t('entry.own.title')}</title>
      <desc id="en-own-s">
        {t('entry.own.describes', {
          a: mm(size.aMm),
          b: mm(size.bMm),
          dbl: mm(size.dblMm),
          family: t(`entry.own.${size.outline.family ?? 'panto'}`),
        })}
      </desc>
      <PlainFront shape={shape} />
      <g class="construction">
        <path d={shape.box} />
        <path d={shape.box} transform="scale(-1 1)" />
      </g>
      {dimensions(size, shape).map(({ letter, mm: length, extensions, line, arrows, text }) => (
        <g class="dimension" key={letter}>
          <path class="extension" d={extensions} />
          <path d={line} />
          <path class="arrow" d={arrows} />
          <text
            x={text.x}
            y={text.y}
            transform={text.upright ? `rotate(-90 ${text.x} ${text.y})` : undefined}
          >
            {letter} {mm(length)}
          </text>
        </g>
      ))}
    </svg>
  );
}

/** A frame from the front without colours, to scale: content of an `svg` whose unit is 1 mm. */
import type { FrameShape } from '../../components/drawing/frameDrawing.ts';

const SIDES = [undefined, 'scale(-1 1)'];

export function PlainFront({ shape }: { readonly shape: FrameShape }) {
  return (
    <g class="en-front">
      <path class="en-part" d={shape.bridge} />
      {SIDES.map((transform) => (
        <g key={transform} transform={transform}>
          <path class="en-part" d={shape.end.path} />
          {shape.rim && <path class="en-part" fill-rule="evenodd" d={shape.rim} />}
          <path class="lens" d={shape.lens} />
          {shape.thread && <path class="thread" d={shape.thread} />}
        </g>
      ))}
    </g>
  );
}

/** The key to the marks that a pair from the front shows. */
import type { FrontView } from '../../quote/view/front.ts';
import { Key } from './Figure.tsx';
import { Pupil, Reference } from './FrontMarks.tsx';
import { cross, head } from './marks.ts';
import type { Tell } from './tell.ts';

const HERE = { xMm: 0, yMm: 0 };

export function FrontKey({
  view,
  uid,
  tell,
}: {
  readonly view: FrontView;
  readonly uid: string;
  readonly tell: Tell;
}) {
  const { d } = tell;
  const eyes = [view.right, view.left];
  const some = (has: (eye: FrontView['right']) => unknown) => eyes.some((eye) => Boolean(has(eye)));
  const marks = [
    { on: true, key: 'lens', mark: <rect class="dw-lens" x="-6" y="-3" width="12" height="6" rx="2.4" /> },
    { on: true, key: 'box', mark: <rect class="dw-box" x="-6" y="-3" width="12" height="6" /> },
    { on: some(({ pupil }) => pupil), key: 'pupil', mark: <Pupil at={HERE} /> },
    {
      on: some(({ reference }) => reference),
      key: view.referenceIs,
      mark: <Reference kind={view.referenceIs} at={HERE} />,
    },
    { on: some((eye) => eye.cross), key: 'cross', mark: <path class="dw-cross" d={cross(0, 0, 3.4)} /> },
    {
      on: some(({ corridor }) => corridor),
      key: 'corridor',
      mark: (
        <>
          <rect class="dw-zone" x="-5" y="0" width="10" height="3.6" />
          <path class="dw-corridor" d="M-1 -4L0 0" />
        </>
      ),
    },
    {
      on: some(({ segment }) => segment),
      key: 'segment',
      mark: <path class="dw-zone dw-segment" d="M-4.4 -2A5 5 0 1 0 4.4 -2Z" />,
    },
    {
      on: some(({ prism }) => prism),
      key: 'prism',
      mark: (
        <g class="dw-prism">
          <path d="M-5 0H3" />
          <path class="dw-head" d={head(5, 0, 1, 0, 3.4)} />
        </g>
      ),
    },
    {
      on: some(({ blank }) => blank),
      key: 'blankEdge',
      mark: <path class="dw-blank" d="M-7 3A9 9 0 0 1 7 3" />,
    },
    {
      on: some(({ blank }) => blank),
      key: 'blankUsable',
      mark: <path class="dw-blank-usable" d="M-7 3A9 9 0 0 1 7 3" />,
    },
    {
      on: some(({ blank }) => blank && blank.spareMm < 0),
      key: 'uncovered',
      mark: <rect class="dw-uncovered" x="-6" y="-3" width="12" height="6" fill={`url(#${uid}-hatch)`} />,
    },
  ];
  return (
    <Key
      marks={marks.filter(({ on }) => on).map(({ key, mark }) => ({ name: d(`front.key.${key}`), mark }))}
    />
  );
}

/** A street in daylight above, a page of print held below: what a wearer looks at. Drawn here; mm, y down. */

const HOUSES = [
  { x: -44, width: 17, top: -24, tone: 'a' },
  { x: -27, width: 12, top: -19, tone: 'b' },
  { x: 22, width: 22, top: -27, tone: 'c' },
] as const;

/** The page begins here. */
const PAGE_TOP = 8;
const LINE_MM = 4.1;
const LETTERS_A_LINE = 34;

/** Words in lines of a page's width. */
export function linesOf(text: string, count: number): readonly string[] {
  const lines: string[] = [''];
  for (let i = 0; i < 4; i++)
    for (const word of text.split(' ')) {
      const last = lines.at(-1) ?? '';
      if (last.length + word.length < LETTERS_A_LINE) lines[lines.length - 1] = `${last} ${word}`.trim();
      else lines.push(word);
    }
  return lines.slice(0, count);
}

export function Scene({ print }: { readonly print: string }) {
  return (
    <g class="dw-scene">
      <rect class="dw-sky" x="-50" y="-50" width="100" height="52" />
      <circle class="dw-sun" cx="12" cy="-27" r="3.4" />
      <path class="dw-hill" d="M-50 -8Q-20 -17 6 -10T50 -12V0H-50Z" />
      {HOUSES.map(({ x, width, top, tone }) => (
        <House key={x} x={x} width={width} top={top} tone={tone} />
      ))}
      <rect class="dw-pavement" x="-50" y="-2" width="100" height="12" />
      <path class="dw-road" d="M-5 -4L-26 12H32L5 -4Z" />
      <path class="dw-stripe" d="M0 -3L.2 -1.6M.5 0L1 2.4M1.4 4.6L2 8" />
      <path class="dw-trunk" d="M-15 1V-9" />
      <circle class="dw-leaves" cx="-15" cy="-12" r="5" />
      <path class="dw-pole" d="M16 4V-20" />
      <rect class="dw-signal" x="13.6" y="-21" width="4.8" height="12.4" rx="1" />
      <circle class="dw-red" cx="16" cy="-18.6" r="1.5" />
      <circle class="dw-amber" cx="16" cy="-14.8" r="1.5" />
      <circle class="dw-green" cx="16" cy="-11" r="1.5" />
      <rect class="dw-desk" x="-50" y="10" width="100" height="40" />
      <path class="dw-page" d={`M-36 ${PAGE_TOP}H36L40 40H-40Z`} />
      <g class="dw-print">
        {linesOf(print, 7).map((line, i) => (
          <text key={line + String(i)} x={-33 - i * 0.3} y={PAGE_TOP + 5.4 + i * LINE_MM}>
            {line}
          </text>
        ))}
      </g>
    </g>
  );
}

function House(props: {
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly tone: 'a' | 'b' | 'c';
}) {
  const { x, width, top, tone } = props;
  const windows = Array.from({ length: Math.floor(width / 5) }, (_, i) => x + 2 + i * 5);
  return (
    <>
      <path
        class={`dw-house-${tone}`}
        d={`M${x} 0V${top}L${x + width / 2} ${top - 5}L${x + width} ${top}V0Z`}
      />
      <path
        class="dw-window"
        d={windows.flatMap((left) => [top + 3, top + 10].map((y) => `M${left} ${y}h2.2v3.4h-2.2Z`)).join('')}
      />
    </>
  );
}

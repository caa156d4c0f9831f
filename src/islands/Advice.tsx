/** What could be done instead: a way out, remedies of findings, better pairs. Each can be taken, and taken back. */
import { useEffect, useRef } from 'preact/hooks';
import { applyChanges, undoChanges } from '../configurator/changing.ts';
import type { Advice as State } from '../configurator/worksheet.ts';
import type { Alternative, Finding, Remedy } from '../quote/answer.ts';
import { changeName, type PackageChange } from '../quote/change.ts';
import { Elsewhere } from './Elsewhere.tsx';
import { useSheet } from './sheet.ts';
import { useFigures } from './useFigures.ts';
import { useStore } from './useStore.ts';

type Changes = readonly PackageChange[];

/** What changes are told by, in the shop's words. */
function useNames(): (changes: Changes) => string {
  const { data, frame, read, advice } = useSheet();
  return (changes) => {
    const [pair] = read.get().request.pairs;
    const { models } = advice.get();
    return changes
      .map((change) => {
        if (change.kind === 'frame') return models[`${change.value} ${change.size}`] ?? change.value;
        return pair ? changeName({ ...data, frames: [frame] }, pair, change) : change.value;
      })
      .join(', ');
  };
}

/** A button that makes the changes; where they lead to another frame, links to its page. */
function Take({ changes }: { readonly changes: Changes }) {
  const sheet = useSheet();
  const names = useNames()(changes);
  const frame = changes.find(({ kind }) => kind === 'frame')?.value;
  if (frame !== undefined) return <Elsewhere changes={changes} frame={frame} names={names} />;
  return (
    <button type="button" class="ws-take" onClick={() => applyChanges(sheet, changes, names)}>
      {sheet.t('instead.take', { names })}
    </button>
  );
}

/** The smallest change that makes a refused pair one that can be made. */
export function WayOut({ state: { kind, pair } }: { readonly state: State }) {
  const { t } = useSheet();
  const { difference } = useFigures();
  if (kind === 'none' || (pair !== null && pair.verdict !== 'refused')) return null;
  const wayOut = pair?.wayOut ?? null;
  return (
    <section class="ws-instead" aria-labelledby="ws-way-out">
      <h4 id="ws-way-out">{t('instead.wayOut')}</h4>
      {kind === 'waiting' && <p>{t('instead.looking')}</p>}
      {kind === 'failed' && <p>{t('instead.failed')}</p>}
      {kind === 'given' && wayOut === null && <p>{t('instead.none')}</p>}
      {wayOut && (
        <>
          <p>
            {wayOut.message}{' '}
            {wayOut.differenceMinor === 0 ? t('instead.samePrice') : difference(wayOut.differenceMinor)}
          </p>
          <Take changes={wayOut.changes} />
        </>
      )}
    </section>
  );
}

/** The remedies of a finding, those of both eyes where it was folded. */
export function Remedies({ finding }: { readonly finding: Finding }) {
  const { advice } = useSheet();
  const { pair } = useStore(advice);
  const all = (pair?.findings ?? []).filter(
    ({ rule, eye, level }) =>
      rule === finding.rule && level === finding.level && (finding.eye === 'both' || finding.eye === eye),
  );
  const remedies = new Map<string, Remedy>();
  for (const { remedy } of all) if (remedy) remedies.set(JSON.stringify(remedy.change), remedy);
  return (
    <>
      {[...remedies.values()].map(({ change, message }) => (
        <div class="ws-remedy" key={message}>
          <p>{message}</p>
          <Take changes={[change]} />
        </div>
      ))}
    </>
  );
}

/** Better pairs by each aim, a row each. */
export function Alternatives() {
  const { t, advice } = useSheet();
  const { pair } = useStore(advice);
  const { difference, fixed, money } = useFigures();
  const names = useNames();
  if (pair === null || pair.alternatives.length === 0) return null;
  const figure = (aim: string, value: number) =>
    aim === 'cheapest'
      ? money(value)
      : `${fixed(value, aim === 'thinnest' || aim === 'least-reflecting' ? 2 : 1)}\u00a0${t(`instead.unit.${aim}`)}`;
  const row = ({ aim, changes, from, to, differenceMinor }: Alternative) => (
    <tr key={aim}>
      <th scope="row">{t(`instead.aim.${aim}`)}</th>
      <td>
        {names(changes)}
        <br />
        {t('instead.fromTo', { from: figure(aim, from), to: figure(aim, to) })}
        <br />
        <Take changes={changes} />
      </td>
      <td>{difference(differenceMinor)}</td>
    </tr>
  );
  return (
    <table class="ws-lenses ws-instead-table">
      <caption>{t('instead.legend')}</caption>
      <thead>
        <tr>
          <th scope="col">{t('instead.aims')}</th>
          <th scope="col">{t('instead.changes')}</th>
          <th scope="col">{t('trade.price')}</th>
        </tr>
      </thead>
      <tbody>{pair.alternatives.map(row)}</tbody>
    </table>
  );
}

/** What was changed last, and the way back. The button that did it is gone, so the focus goes here. */
export function Applied() {
  const sheet = useSheet();
  const { t, applied } = sheet;
  const last = useStore(applied);
  const back = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (last !== null) back.current?.focus({ preventScroll: true });
  }, [last]);
  const takeBack = () => {
    undoChanges(sheet);
    document.getElementById('ws-ticket')?.focus({ preventScroll: true });
  };
  return (
    <div class="ws-applied" role="status">
      {last && (
        <>
          <span>
            {t('instead.done', { names: last.names })} {last.heights && t('instead.heights')}
          </span>{' '}
          <button type="button" class="ws-take" ref={back} onClick={takeBack}>
            {t('instead.undo')}
          </button>
        </>
      )}
    </div>
  );
}

/** How a pair comes out: the verdict with what decides it, what would bring it in, and every item with its limit. */
import type { InspectedItem } from '../../optics/tolerance/limit.ts';
import type { JudgedPair } from '../../quote/judgePair.ts';
import type { PairInspection } from '../../workroom/inspection/pairInspection.ts';
import {
  cureTexts,
  decisiveText,
  figure,
  limitWords,
  outcomeText,
  unitKey,
  verdictKey,
} from '../../workroom/papers/inspectionWords.ts';
import { useBench } from './useBench.ts';

interface Props {
  readonly judged: JudgedPair;
  readonly found: PairInspection;
}

export function InspectResult({ judged, found }: Props) {
  const { t, w, offer } = useBench();
  const { items, alignment } = cureTexts(w, judged, found);
  const cures = alignment === null ? items : [...items, alignment];
  const { inspection, profile, measured } = found;
  const memory = inspection.items.some(({ basis, limit }) => basis === 'from memory' && limit !== null);
  const checked = offer.workroom.tolerance.memoryChecked;
  return (
    <div class="wr-result" data-verdict={verdictKey(found)}>
      <p role="status">
        <b>{w(`inspection.${verdictKey(found)}`)}</b> {decisiveText(w, found)}
      </p>
      {cures.length > 0 && (
        <ul class="wr-sentences">
          {cures.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      )}
      {measured.by === '' && <p class="ws-note">{t('inspect.nobody')}</p>}
      <p class="ws-note">
        {w('inspection.profile')}: {profile.title} ({w(`basis.${profile.basis.replaceAll(' ', '-')}`)}).{' '}
        {profile.note}
      </p>
      {memory && <p class="wr-memory">{w(checked ? 'inspection.memoryChecked' : 'inspection.memory')}</p>}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by keyboard too */}
      <section class="wr-scroll" tabIndex={0} aria-label={t('inspect.items')}>
        <table class="figures wr-items">
          <thead>
            <tr>
              {['item', 'ordered', 'limit', 'measured', 'outcome'].map((key) => (
                <th key={key} scope="col">
                  {w(`inspection.${key}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {inspection.items.map((item) => (
              <Item key={`${item.item} ${item.eye}`} item={item} isDecisive={item === inspection.decisive} />
            ))}
          </tbody>
        </table>
      </section>
    </div>
  );
}

function Item({ item, isDecisive }: { readonly item: InspectedItem; readonly isDecisive: boolean }) {
  const { t, w } = useBench();
  const { size, memory, band } = limitWords(w, item);
  return (
    <tr data-outcome={item.outcome}>
      <th scope="row">
        {w(`item.${item.item}`)} <small>{w(unitKey(item))}</small>, {w(`eye.${item.eye}`)}
        {isDecisive && <b class="wr-decisive"> {t('inspect.decisive')}</b>}
      </th>
      <td>{figure(item.ordered, item)}</td>
      <td>
        {size} <small>{[memory, band].filter((one) => one !== '').join(', ')}</small>
      </td>
      <td>{figure(item.measured, item)}</td>
      <td class="wr-outcome">{outcomeText(w, item)}</td>
    </tr>
  );
}

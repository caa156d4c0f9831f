/** The inspections of a pair that were set aside: when, by whom, and how each came out. */
import type { JudgedPair } from '../../quote/judgePair.ts';
import { inspectPair } from '../../workroom/inspection/inspectPair.ts';
import { cureTexts, decisiveText, verdictKey } from '../../workroom/papers/inspectionWords.ts';
import type { Draft } from './benchState.ts';
import { readMeasured } from './measuring.ts';
import { useBench } from './useBench.ts';

interface Props {
  readonly judged: JudgedPair;
  readonly drafts: readonly Draft[];
}

export function Earlier({ judged, drafts }: Props) {
  const { t, w, day, offer } = useBench();
  if (drafts.length === 0) return null;
  const told = drafts.flatMap((draft) => {
    const { measured } = readMeasured(judged, draft, offer.workroom.alignment.length);
    const found = measured && inspectPair(judged, measured, offer);
    if (found === null) return [];
    const { items, alignment } = cureTexts(w, judged, found);
    const head = [found.measured.on === '' ? '' : day(found.measured.on), found.measured.by];
    return [
      {
        head: head.filter((one) => one !== '').join(', '),
        text: [w(`inspection.${verdictKey(found)}`), decisiveText(w, found), ...items, alignment ?? '']
          .filter((one) => one !== '')
          .join(' '),
      },
    ];
  });
  return (
    <>
      <h4>{t('inspect.earlier')}</h4>
      <ol class="wr-sentences">
        {told.map(({ head, text }, at) => (
          <li key={at}>
            <b>{head}</b> {text}
          </li>
        ))}
      </ol>
    </>
  );
}

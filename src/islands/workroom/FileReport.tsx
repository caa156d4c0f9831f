/** What became of each file that was given. */
import { useStore } from '../useStore.ts';
import type { Told } from './benchState.ts';
import { useBench } from './useBench.ts';

export function FileReport() {
  const bench = useBench();
  const { t } = bench;
  const told = useStore(bench.told);
  const busy = useStore(bench.busy);
  if (told.length === 0) return null;
  const notable = told.filter(({ kind, lines }) => kind !== 'opened' || lines.length > 1);
  const count = (kind: Told['kind']) => told.filter((one) => one.kind === kind).length;
  return (
    <section class="wr-part wr-report" aria-labelledby="wr-report">
      <h2 id="wr-report" class="ws-head">
        {t('told.title')}
      </h2>
      <p>
        {busy
          ? t('told.busy', { count: told.length })
          : t('told.summary', {
              files: told.length,
              opened: count('opened'),
              same: count('same'),
              waits: count('waits'),
              refused: count('refused'),
            })}
      </p>
      {notable.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a thousand lines are scrolled by keyboard too
        <ul class="wr-told" tabIndex={0} aria-labelledby="wr-report">
          {notable.map(({ name, kind, lines }, at) => (
            <li key={at} data-kind={kind}>
              <b>{name}</b> {lines.join(' ')}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

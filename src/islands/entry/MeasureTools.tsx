/** Beside the measurements: what an error of the PD does, a rule to print, and where heights are measured. */
import { pageHref } from '../../catalogue/languages.ts';
import { useSheet } from '../sheet.ts';
import { useStore } from '../useStore.ts';
import { Later, LaterDetails } from './Later.tsx';
import { useHasPower } from './PrescriptionTools.tsx';

/** What one millimetre of error in the PD does; the line keeps its place until a power is there. */
export function PdHelp() {
  const { t, data, chosen } = useSheet();
  const hasPower = useHasPower();
  const none = useStore(chosen.use) === 'none';
  return (
    <div class="en-pd ws-note">
      {none ? (
        <p>{t('entry.pd.none')}</p>
      ) : (
        <Later
          load={() => import('./Consequences.tsx').then((m) => m.PdLines)}
          wanted={hasPower}
          meanwhile={<p>{t('entry.pd.waiting')}</p>}
        />
      )}
      <p>
        <a href={pageHref(data.shop, '/measuring-rule/')}>{t('entry.pd.rule')}</a>
      </p>
    </div>
  );
}

/** Where heights are measured, drawn on this frame. */
export function HeightsSlot() {
  const { t } = useSheet();
  return (
    <LaterDetails
      summary={t('entry.heights.open')}
      load={() => import('./Heights.tsx').then((m) => m.Heights)}
    />
  );
}

/** The work in hand: counts by step, a search, every job with where it stands, and what went wrong most. */
import { useState } from 'preact/hooks';
import { JOB_STATES, type JobState } from '../../catalogue/workroom.ts';
import {
  countByState,
  lateJobs,
  type Progress,
  searchJobs,
  standing,
  troubles,
} from '../../workroom/inHand.ts';
import { showNumber } from '../../workroom/job.ts';
import { useStore } from '../useStore.ts';
import { useBench } from './useBench.ts';

export function InHand() {
  const bench = useBench();
  const { t, w } = bench;
  const progress = useStore(bench.progress);
  const names = useStore(bench.names);
  const [typed, setTyped] = useState('');
  const [only, setOnly] = useState<JobState | null>(null);
  const counts = countByState(progress);
  const found = searchJobs(progress, typed, names).filter(
    (job) => only === null || standing(job).state === only,
  );
  const late = new Map(
    lateJobs(progress, bench.today(), bench.offer.workroom.lateAfterDays).map(({ job, days }) => [
      job.number,
      days,
    ]),
  );
  const lateFirst = found.toSorted((a, b) => (late.get(b.number) ?? 0) - (late.get(a.number) ?? 0));
  return (
    <section class="wr-part wr-hand" aria-labelledby="wr-hand">
      <h2 id="wr-hand" class="ws-head">
        {t('hand.title')}
      </h2>
      {progress.length === 0 && <p class="ws-note">{t('hand.none')}</p>}
      {progress.length > 0 && (
        <>
          <p>{t('hand.counts', { jobs: progress.length, late: late.size })}</p>
          <fieldset class="wr-counts">
            <legend class="ws-unseen">{t('hand.only')}</legend>
            {JOB_STATES.map((state) => (
              <button
                key={state}
                class="wr-count"
                type="button"
                aria-pressed={only === state}
                onClick={() => setOnly(only === state ? null : state)}
              >
                {w(`state.${state}`)} <b>{counts[state]}</b>
              </button>
            ))}
          </fieldset>
          <div class="ws-field">
            <label for="wr-search">{t(names.size > 0 ? 'hand.search' : 'hand.searchNumber')}</label>
            <input
              id="wr-search"
              type="search"
              autocomplete="off"
              value={typed}
              onInput={({ currentTarget }) => setTyped(currentTarget.value)}
            />
          </div>
          {lateFirst.length === 0 && <p class="ws-note">{t('hand.notFound')}</p>}
          <ul class="wr-jobs">
            {lateFirst.map((job) => (
              <JobLine key={job.number} job={job} lateDays={late.get(job.number) ?? null} />
            ))}
          </ul>
          <Troubles jobs={progress} />
        </>
      )}
    </section>
  );
}

function JobLine({ job, lateDays }: { readonly job: Progress; readonly lateDays: number | null }) {
  const bench = useBench();
  const { t, w } = bench;
  const held = useStore(bench.held).filter((one) => one.job.number === job.number);
  const waiting = useStore(bench.waiting).some(({ id }) => id.startsWith(job.number));
  const chosen = useStore(bench.chosen);
  const { state, on } = standing(job);
  const stands = t('hand.stands', { state: w(`state.${state}`), day: bench.day(on) });
  return (
    <li>
      {held.map(({ id, shown, names }) => (
        <button
          key={id}
          class="wr-job"
          type="button"
          aria-current={chosen === id}
          onClick={() => bench.chosen.set(id)}
        >
          <b>{held.length > 1 ? `${shown} ${id.slice(13)}` : shown}</b>
          <span>{names.join(', ')}</span>
        </button>
      ))}
      {held.length === 0 && (
        <p class="wr-job">
          <b>{showNumber(job.number)}</b>
          <span>{t(waiting ? 'hand.sealed' : 'hand.noFile')}</span>
        </p>
      )}
      <p class="wr-stands">
        {stands}
        {lateDays !== null && <b class="wr-late"> {t('hand.late', { days: lateDays })}</b>}
      </p>
    </li>
  );
}

function Troubles({ jobs }: { readonly jobs: readonly Progress[] }) {
  const { t } = useBench();
  const rows = troubles(jobs);
  if (rows.length === 0) return null;
  return (
    <table class="figures wr-troubles">
      <caption class="ws-head">{t('trouble.title')}</caption>
      <thead>
        <tr>
          <th scope="col">{t('trouble.reason')}</th>
          <th scope="col">{t('trouble.count')}</th>
          <th scope="col">{t('trouble.perHundred')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ reason, count, perHundred }) => (
          <tr key={reason}>
            <th scope="row">{t(`reason.${reason}`)}</th>
            <td>{count}</td>
            <td>{perHundred}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Where a job stands, its way so far, the next step, and beginning again with the reason kept. */
import { useState } from 'preact/hooks';
import { JOB_STATES, type JobState } from '../../catalogue/workroom.ts';
import {
  advance,
  nextState,
  type Progress,
  REMAKE_REASONS,
  type Remake,
  remake,
  standing,
} from '../../workroom/inHand.ts';
import { useStore } from '../useStore.ts';
import { useBench } from './useBench.ts';

export function Steps({ number }: { readonly number: string }) {
  const bench = useBench();
  const { t, w } = bench;
  const job = useStore(bench.progress).find((one) => one.number === number);
  if (job === undefined) return null;
  return (
    <section class="wr-part" aria-labelledby="wr-steps">
      <h3 id="wr-steps" class="ws-head">
        {t('steps.title')}
      </h3>
      <ol class="wr-steps">
        {job.steps.map(({ state, on, by }, at) => (
          <li key={at}>
            <b>{w(`state.${state}`)}</b> {[bench.day(on), by].filter((one) => one !== '').join(', ')}
          </li>
        ))}
      </ol>
      {job.remakes.map(({ on, reason, eye, note }, at) => (
        <p key={at} class="wr-remade">
          {t('steps.remade', { day: bench.day(on), reason: t(`reason.${reason}`), eye: w(`eye.${eye}`) })}{' '}
          {note}
        </p>
      ))}
      <NextStep key={job.steps.length} job={job} />
      <details>
        <summary>{t('steps.remake')}</summary>
        <RemakeForm job={job} />
      </details>
    </section>
  );
}

/** Who works at this bench: asked once, and kept as long as the page is open. */
function By({ id }: { readonly id: string }) {
  const bench = useBench();
  const by = useStore(bench.by);
  return (
    <div class="ws-field">
      <label for={id}>{bench.t('steps.by')}</label>
      <input
        id={id}
        maxLength={40}
        autocomplete="off"
        value={by}
        onInput={({ currentTarget }) => bench.by.set(currentTarget.value)}
      />
    </div>
  );
}

function DayField({
  id,
  on,
  set,
}: {
  readonly id: string;
  readonly on: string;
  readonly set: (on: string) => void;
}) {
  const { t } = useBench();
  return (
    <div class="ws-field">
      <label for={id}>{t('steps.on')}</label>
      <input
        id={id}
        type="date"
        required
        value={on}
        onInput={({ currentTarget }) => set(currentTarget.value)}
      />
    </div>
  );
}

function NextStep({ job }: { readonly job: Progress }) {
  const bench = useBench();
  const { t, w } = bench;
  const [state, setState] = useState<JobState>(nextState(standing(job).state) ?? 'returned');
  const [on, setOn] = useState(bench.today());
  return (
    <form
      class="wr-form"
      onSubmit={(event) => {
        event.preventDefault();
        void bench.note(advance(job, { state, on, by: bench.by.get().trim() }));
        bench.said.set(t('steps.noted', { state: w(`state.${state}`) }));
      }}
    >
      <div class="ws-field">
        <label for="wr-next">{t('steps.next')}</label>
        <select
          id="wr-next"
          value={state}
          onInput={({ currentTarget }) => setState(currentTarget.value as JobState)}
        >
          {JOB_STATES.map((one) => (
            <option key={one} value={one}>
              {w(`state.${one}`)}
            </option>
          ))}
        </select>
      </div>
      <DayField id="wr-next-on" on={on} set={setOn} />
      <By id="wr-next-by" />
      <button class="ws-button" type="submit">
        {t('steps.note')}
      </button>
    </form>
  );
}

/** A remake whose reason and lens may not be chosen yet. */
type Begun = Omit<Remake, 'reason' | 'eye'> & {
  readonly reason: Remake['reason'] | '';
  readonly eye: Remake['eye'] | '';
};

function RemakeForm({ job }: { readonly job: Progress }) {
  const bench = useBench();
  const { t, w } = bench;
  const [why, setWhy] = useState<Begun>({ on: bench.today(), reason: '', eye: '', note: '' });
  const select = <K extends 'reason' | 'eye'>(key: K, options: readonly (readonly [Remake[K], string])[]) => (
    <div class="ws-field">
      <label for={`wr-${key}`}>{t(`steps.${key}`)}</label>
      <select
        id={`wr-${key}`}
        required
        value={why[key]}
        onInput={({ currentTarget }) => setWhy({ ...why, [key]: currentTarget.value })}
      >
        <option value="">{t('steps.choose')}</option>
        {options.map(([value, text]) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
  return (
    <form
      class="wr-form"
      onSubmit={(event) => {
        event.preventDefault();
        const { on, reason, eye } = why;
        if (reason === '' || eye === '') return;
        void bench.note(remake(job, { on, reason, eye, note: why.note.trim() }, bench.by.get().trim()));
        setWhy({ on, reason: '', eye: '', note: '' });
        bench.said.set(t('steps.again'));
      }}
    >
      {select(
        'reason',
        REMAKE_REASONS.map((reason) => [reason, t(`reason.${reason}`)]),
      )}
      {select(
        'eye',
        (['right', 'left', 'both'] as const).map((eye) => [eye, w(`eye.${eye}`)]),
      )}
      <DayField id="wr-remake-on" on={why.on} set={(on) => setWhy({ ...why, on })} />
      <By id="wr-remake-by" />
      <div class="ws-field wr-wide">
        <label for="wr-remake-note">{t('steps.why')}</label>
        <input
          id="wr-remake-note"
          maxLength={300}
          autocomplete="off"
          aria-describedby="wr-remake-says"
          value={why.note}
          onInput={({ currentTarget }) => setWhy({ ...why, note: currentTarget.value })}
        />
      </div>
      <p id="wr-remake-says" class="ws-note wr-wide">
        {t('steps.noNames')}
      </p>
      <button class="ws-button" type="submit">
        {t('steps.begin')}
      </button>
    </form>
  );
}

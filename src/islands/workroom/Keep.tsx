/** What is kept in this browser, by choice; all of it out as one file, back in, or gone. */
import { useStore } from '../useStore.ts';
import { Confirm } from './Confirm.tsx';
import { saveFile } from './saveFile.ts';
import { useBench } from './useBench.ts';

export function Keep() {
  const bench = useBench();
  const { t } = bench;
  const keeping = useStore(bench.keeping);
  const failed = useStore(bench.failed);
  const progress = useStore(bench.progress);
  return (
    <section class="wr-part" aria-labelledby="wr-keep">
      <h2 id="wr-keep" class="ws-head">
        {t('keep.title')}
      </h2>
      <label class="wr-tick">
        <input
          type="checkbox"
          checked={keeping}
          aria-describedby="wr-keep-says"
          onChange={({ currentTarget }) => void bench.setKeeping(currentTarget.checked)}
        />
        {t('keep.tick')}
      </label>
      <p id="wr-keep-says" class="ws-note">
        {t('keep.says')}
      </p>
      {failed !== '' && (
        <p class="ws-fault" role="alert">
          {failed}
        </p>
      )}
      <div class="wr-row">
        <button
          class="ws-button"
          type="button"
          disabled={progress.length === 0}
          onClick={() =>
            void bench
              .exported()
              .then((all) => saveFile(`workroom-${bench.today()}.jsonl`, all, 'application/jsonl'))
          }
        >
          {t('keep.export')}
        </button>
        <label class="ws-button wr-pick">
          {t('keep.import')}
          <input
            class="wr-file"
            type="file"
            onChange={({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              if (file === undefined) return;
              void bench.importBundle(file).then(() => {
                currentTarget.value = '';
              });
            }}
          />
        </label>
        {(keeping || progress.length > 0) && (
          <Confirm
            label={t('keep.delete')}
            question={t('keep.sure')}
            yes={t('keep.yes')}
            onYes={() => void bench.wipe()}
          />
        )}
      </div>
      <Imported />
    </section>
  );
}

function Imported() {
  const bench = useBench();
  const said = useStore(bench.imported);
  return said === '' ? null : <p>{said}</p>;
}

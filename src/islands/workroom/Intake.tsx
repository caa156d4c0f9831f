/** Where order files and private keys come in: picked, dropped, or typed. */
import { useEffect, useState } from 'preact/hooks';
import { useStore } from '../useStore.ts';
import { useBench } from './useBench.ts';

/** A key file has a few lines. */
const MOST_KEY_BYTES = 100_000;

export function Intake() {
  const bench = useBench();
  const { t } = bench;
  const busy = useStore(bench.busy);
  useDrop(bench.openFiles);
  return (
    <section class="wr-part" aria-labelledby="wr-files">
      <h2 id="wr-files" class="ws-head">
        {t('files.title')}
      </h2>
      <div class="wr-drop">
        <label class="ws-button wr-pick">
          {t('files.pick')}
          <input
            class="wr-file"
            type="file"
            multiple
            disabled={busy}
            onChange={({ currentTarget }) => {
              const files = [...(currentTarget.files ?? [])];
              // The same file may be picked again.
              currentTarget.value = '';
              void bench.openFiles(files);
            }}
          />
        </label>
        <p class="ws-note">{t('files.drop')}</p>
      </div>
      <KeyEntry />
    </section>
  );
}

/** Files dropped anywhere on the page are opened, and never shown by the browser in its place. */
function useDrop(open: (files: readonly File[]) => Promise<void>): void {
  useEffect(() => {
    const over = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      event.preventDefault();
      const files = [...(event.dataTransfer?.files ?? [])];
      if (files.length > 0) void open(files);
    };
    addEventListener('dragover', over);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('drop', drop);
    };
  }, [open]);
}

function KeyEntry() {
  const bench = useBench();
  const { t } = bench;
  const keys = useStore(bench.keys);
  const waiting = useStore(bench.waiting);
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const give = async (text: string) => {
    const why = await bench.giveKeys(text);
    setWrong(why);
    if (why === null) setTyped('');
  };
  const giveFile = async (file: File | undefined) => {
    if (file === undefined) return;
    if (file.size > MOST_KEY_BYTES) setWrong(t('key.large'));
    else await give(await file.text());
  };
  return (
    <>
      <form
        class="wr-key"
        onSubmit={(event) => {
          event.preventDefault();
          void give(typed);
        }}
      >
        <div class="ws-field">
          <label for="wr-key">{t('key.label')}</label>
          <input
            id="wr-key"
            type="password"
            autocomplete="off"
            spellcheck={false}
            value={typed}
            aria-invalid={wrong !== null}
            aria-describedby="wr-key-told"
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
        </div>
        <button class="ws-button" type="submit">
          {t('key.use')}
        </button>
        <label class="ws-button wr-pick">
          {t('key.file')}
          <input
            class="wr-file"
            type="file"
            onChange={({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              void giveFile(file).then(() => {
                currentTarget.value = '';
              });
            }}
          />
        </label>
      </form>
      <p id="wr-key-told" class={wrong === null ? 'ws-note' : 'ws-fault'}>
        {wrong ?? t('key.memory')}
      </p>
      {keys.length > 0 && (
        <p class="wr-row">
          <span>{t('key.held', { count: keys.length })}</span>
          <button class="ws-button" type="button" onClick={bench.lock}>
            {t('key.lock')}
          </button>
        </p>
      )}
      {waiting.length > 0 && (
        <p class="wr-row">
          <span>{t('key.waiting', { count: waiting.length })}</span>
          {waiting.some(({ id }) => id === '') && (
            <button class="ws-button" type="button" onClick={bench.dropWaiting}>
              {t('key.drop')}
            </button>
          )}
        </p>
      )}
    </>
  );
}

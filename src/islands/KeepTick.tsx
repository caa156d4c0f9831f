/** The box whose tick keeps entries on this device. */

interface KeepTickProps {
  readonly t: (key: string) => string;
  readonly kept: boolean;
  readonly onTick: (on: boolean) => void;
}

export function KeepTick({ t, kept, onTick }: KeepTickProps) {
  return (
    <>
      <div class="ws-tick">
        <input
          type="checkbox"
          id="ws-keep"
          checked={kept}
          onChange={({ currentTarget }) => onTick(currentTarget.checked)}
          aria-describedby="ws-keep-text"
        />
        <label for="ws-keep">{t('keeping.keep')}</label>
      </div>
      <p class="ws-note" id="ws-keep-text">
        {t('keeping.keepText')}
      </p>
    </>
  );
}

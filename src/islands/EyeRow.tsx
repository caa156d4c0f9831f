/** The line of one eye on the prescription. */
import { type Field as Name, PRISM_ROWS } from '../configurator/fields.ts';
import type { Eye } from '../optics/types.ts';
import { BalanceTick, EyeLegend, POWERS, PowerFields, PrismFields } from './EyeParts.tsx';
import { Message } from './Field.tsx';
import { useEntryStores } from './sheet.ts';

export function EyeRow({ eye }: { readonly eye: Eye }) {
  const { t } = useEntryStores();
  const told: [Name, string][] = [
    ...POWERS.map((name): [Name, string] => [`${eye}.${name}`, t(`prescription.${name}`)]),
    ...PRISM_ROWS.flatMap((row): [Name, string][] => [
      [`${eye}.prism${row}.amount`, t(`prescription.prism${row}`)],
      [`${eye}.prism${row}.base`, t(`prescription.base${row}`)],
    ]),
  ];
  return (
    <fieldset class="ws-eye">
      <EyeLegend eye={eye} />
      <div class="ws-eye-fields">
        <PowerFields eye={eye} />
        <PrismFields eye={eye} />
      </div>
      <div class="ws-eye-foot">
        <div>
          {told.map(([name, label]) => (
            <Message key={name} name={name} label={label} />
          ))}
        </div>
        <BalanceTick eye={eye} />
      </div>
    </fieldset>
  );
}

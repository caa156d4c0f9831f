/** One of a few values, as a list that unfolds. */

interface PickProps {
  readonly id: string;
  readonly name?: string;
  readonly label: string;
  readonly chosen: string;
  readonly options: readonly (readonly [value: string, text: string])[];
  readonly onPick: (value: string) => void;
}

export function Pick({ id, name, label, chosen, options, onPick }: PickProps) {
  return (
    <div class="ws-field">
      <label for={id}>{label}</label>
      <select
        id={id}
        name={name}
        value={chosen}
        onChange={({ currentTarget }) => onPick(currentTarget.value)}
      >
        {options.map(([value, text]) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

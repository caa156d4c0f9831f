/** Answers that take seconds, kept until the content is read again. */
const kept = new WeakMap<object, Map<string, unknown>>();

/** What `make` gives, made once for each reading of the shop and name. */
export function oncePer<Made>(reading: object, name: string, make: () => Made): Made {
  const made = kept.get(reading) ?? new Map<string, unknown>();
  kept.set(reading, made);
  if (!made.has(name)) made.set(name, make());
  return made.get(name) as Made;
}

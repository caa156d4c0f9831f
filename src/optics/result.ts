/** The outcome of a computation that realistic input can make impossible: a value, or a fault as data. */
export type Result<Value, Fault> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly fault: Fault };

/** A value. */
export const success = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({
  ok: true,
  value,
});

/** A fault as data. */
export const failure = <Fault>(fault: Fault): { readonly ok: false; readonly fault: Fault } => ({
  ok: false,
  fault,
});

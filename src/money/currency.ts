/**
 * Digits after the point of a currency (ISO 4217 code such as `USD`): 2 for most, 0 for JPY, 3 for KWD.
 * Null when the runtime knows no such currency.
 */
export function currencyDigits(code: string): number | null {
  if (!Intl.supportedValuesOf('currency').includes(code)) return null;
  const format = new Intl.NumberFormat('en', { style: 'currency', currency: code });
  return format.resolvedOptions().maximumFractionDigits ?? null;
}

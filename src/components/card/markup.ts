/** Text as HTML holds it, for parts that are on so many pages that they are written as text. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** The text for an element or for an attribute in double quotes. */
export function markup(text: string): string {
  return /[&<>"]/.test(text) ? text.replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign) : text;
}

/** Text as XML holds it. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/** The text for an element or an attribute. */
export function xmlText(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);
}

/** An element that holds text. */
export function element(name: string, text: string): string {
  return `<${name}>${xmlText(text)}</${name}>`;
}

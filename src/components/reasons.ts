/** The rules as a page explains them: their words, with each figure's place marked. */
import type { Words } from '../catalogue/catalogue.ts';
import type { Rule } from '../rules/rule.ts';

export interface Reason {
  readonly id: string;
  readonly title: string;
  readonly why: string;
  /** Sentences that the rule can say, slots as `…`. */
  readonly sentences: readonly string[];
  readonly clearedBy: Rule['clearedBy'];
}

/** Every rule with its words, in the order in which findings are told. */
export function reasonsOf(rules: readonly Rule[], words: Words): readonly Reason[] {
  return rules.map(({ id, clearedBy }) => {
    const own = `rule.${id}.`;
    const sentences = Object.entries(words)
      .filter(([key]) => key.startsWith(own) && ![`${own}title`, `${own}why`].includes(key))
      .map(([, text]) => capital(text.replace(/^\{eye\}\s?: /, '').replaceAll(/\{\w+\}/g, '…')));
    return { id, clearedBy, title: words[`${own}title`] ?? id, why: words[`${own}why`] ?? '', sentences };
  });
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

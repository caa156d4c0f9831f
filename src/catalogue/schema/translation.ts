/** What a file in content/translations holds: the texts of a noun, and nothing else. */
import * as z from 'zod/mini';
import type { TextFields, TextShape } from '../translation/texts.ts';
import { about } from './about.ts';
import { fields, list, text } from './fields.ts';
import type { Schema } from './parse.ts';

/** Texts as they were written, in the shape of `TextFields`. */
export interface Translated {
  readonly [field: string]: string | readonly string[] | Translated | undefined;
}

/** Schema of a translation. What is left out stays in the shop's first language. */
export function translationSchema(texts: TextFields): Schema<Translated> {
  const shape = Object.fromEntries(
    Object.entries(texts).map(([name, one]) => [name, about(meaningOf(one), z.optional(schemaOf(one)))]),
  );
  return fields(shape) as unknown as Schema<Translated>;
}

/** What an editor tells of the field; what it is about stands in the file that is translated. */
function meaningOf(shape: TextShape): string {
  if (shape === 'text') return 'The text in this language.';
  if (shape === 'name') return 'The name in this language. Left out, it stays as it is.';
  if (shape === 'texts') return 'Each text in this language, in the same order.';
  if ('inOrder' in shape) return `The texts of \`${shape.inOrder}\` in this language, in the same order.`;
  if ('group' in shape) return 'Texts of this group.';
  const given = 'text' in shape ? shape.text : shape.texts.join(' and ');
  return `By ${shape.byKey}: ${given} in this language.`;
}

function schemaOf(shape: TextShape): z.ZodMiniType {
  if (shape === 'text' || shape === 'name') return text();
  if (shape === 'texts' || 'inOrder' in shape) return list(text());
  if ('group' in shape) return translationSchema(shape.group) as unknown as z.ZodMiniType;
  if ('text' in shape)
    return z.record(z.string(), text(), { error: `a map from ${shape.byKey} to its text` });
  const each = fields(
    Object.fromEntries(shape.texts.map((one) => [one, about(meaningOf('text'), z.optional(text()))])),
  );
  return z.record(z.string(), each, { error: `a map from ${shape.byKey} to ${shape.texts.join(', ')}` });
}

/** JSON Schemas of what the one door takes and gives, for editors and other programs. */
import * as z from 'zod/mini';
import { answerSchema, faultsSchema } from './answerSchema.ts';
import { requestSchema } from './requestSchema.ts';

const PARTS = { request: requestSchema, answer: answerSchema, faults: faultsSchema } as const;

/** Names of the parts. */
export const SCHEMA_PARTS = Object.keys(PARTS) as readonly (keyof typeof PARTS)[];

/** JSON Schema (draft 2020-12) of a part; null where there is no such part. */
export function jsonSchema(part: string): object | null {
  const schema = Object.hasOwn(PARTS, part) ? PARTS[part as keyof typeof PARTS] : undefined;
  return schema === undefined ? null : z.toJSONSchema(schema);
}

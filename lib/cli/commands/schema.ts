// schema: the design document as JSON Schema.
import { jsonSchema } from '@/lib/design/json-schema';
import { done, json, type Outcome, refused } from '../outcome';

export function schemaCommand(args: readonly string[]): Outcome {
  return args.length > 0 ? refused('schema takes nothing.') : done(json(jsonSchema()));
}

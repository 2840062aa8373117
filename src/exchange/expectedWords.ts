import type * as z from 'zod/mini';
import { dateField, instantField } from '../golf/instant.ts';
import { swingField } from '../golf/swing.ts';
import { idField } from '../golf/text.ts';
import { bare, type Schema } from './schemaTree.ts';

/** Texts of a form of their own, in words. */
const forms = new Map<Schema, string>([
  [idField, 'an id of 1 to 100 letters, digits or - _ . :'],
  [swingField, 'a swing: full, or a clock position such as 9:00'],
  [instantField, 'an instant such as 2026-05-02T09:12:00Z'],
  [dateField, 'a day that exists, such as 2026-05-02'],
]);

interface Limits {
  least?: number;
  most?: number;
  whole?: boolean;
  longest?: number;
  shortest?: number;
  pattern?: string;
}

function limitsOf(schema: Schema): Limits {
  const limits: Limits = {};
  const { checks } = schema._zod.def;
  for (const check of checks ?? []) {
    const def = check._zod.def as z.core.$ZodChecks['_zod']['def'];
    if (def.check === 'greater_than') limits.least = Number(def.value);
    if (def.check === 'less_than') limits.most = Number(def.value);
    if (def.check === 'number_format') limits.whole = true;
    if (def.check === 'max_length') limits.longest = def.maximum;
    if (def.check === 'min_length') limits.shortest = def.minimum;
    if (def.check === 'string_format' && def.pattern) limits.pattern = def.pattern.source;
  }
  if ((schema._zod.def as { check?: string }).check === 'number_format') limits.whole = true;
  return limits;
}

function numberWords({ least, most, whole }: Limits): string {
  const kind = whole ? 'a whole number' : 'a number';
  if (least !== undefined && most !== undefined) return `${kind} from ${least} to ${most}`;
  if (least !== undefined) return `${kind} of ${least} or more`;
  return most === undefined ? kind : `${kind} of ${most} or less`;
}

function oneOf(values: readonly unknown[]): string {
  const words = values.map((value) => (typeof value === 'string' ? `"${value}"` : String(value)));
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

function bareWords(schema: Schema): string {
  const form = forms.get(schema);
  if (form) return form;
  const def = (schema as z.core.$ZodTypes)._zod.def;
  const limits = limitsOf(schema);
  switch (def.type) {
    case 'number':
      return numberWords(limits);
    case 'string': {
      const size = limits.longest === undefined ? 'a text' : `a text of at most ${limits.longest} characters`;
      return limits.pattern === undefined ? size : `${size} that fits ${limits.pattern}`;
    }
    case 'boolean':
      return 'true or false';
    case 'enum':
      return oneOf(Object.values(def.entries));
    case 'literal':
      return oneOf(def.values);
    case 'array': {
      const least = limits.shortest === undefined ? '' : ` of at least ${limits.shortest}`;
      const most = limits.longest === undefined ? '' : ` of at most ${limits.longest}`;
      return `a list${least}${least && most ? ' and' : ''}${most}`;
    }
    case 'union':
      return def.options.map(expectedWords).join(' or ');
    default:
      return 'an object';
  }
}

/** What a schema wants, in words: `a number from 0 to 600 or null`. */
export function expectedWords(schema: Schema): string {
  const { schema: inner, nullable } = bare(schema);
  return nullable ? `${bareWords(inner)} or null` : bareWords(inner);
}

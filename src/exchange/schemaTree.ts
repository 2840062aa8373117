import type * as z from 'zod/mini';

/** Any schema, seen from outside. */
export type Schema = z.core.$ZodType;

function definition(schema: Schema): z.core.$ZodTypes['_zod']['def'] {
  return (schema as z.core.$ZodTypes)._zod.def;
}

/** The schema under defaults, `null` and absence; and whether `null` is allowed. */
export function bare(schema: Schema): { readonly schema: Schema; readonly nullable: boolean } {
  let nullable = false;
  let inner = schema;
  for (;;) {
    const def = definition(inner);
    if (def.type === 'nullable') nullable = true;
    else if (def.type !== 'default' && def.type !== 'optional') return { schema: inner, nullable };
    inner = def.innerType;
  }
}

type Shape = Readonly<Record<string, Schema>>;

/** Shapes found before: a file asks for the same few once a record. */
const shapes = new WeakMap<Schema, Shape>();

/** The keys of an object schema with their schemas, in the schema's order; undefined for any other schema. */
export function shapeOf(schema: Schema): Shape | undefined {
  const known = shapes.get(schema);
  if (known) return known;
  const shape = findShape(schema);
  if (shape) shapes.set(schema, shape);
  return shape;
}

function findShape(schema: Schema): Shape | undefined {
  const def = definition(bare(schema).schema);
  if (def.type === 'object') return def.shape;
  // A union of a word and an object (the wind of a shot) has the keys of the object.
  if (def.type === 'union') return def.options.map(findShape).find((shape) => shape !== undefined);
  return undefined;
}

/** The schema of a list's elements; undefined for any other schema. */
export function elementOf(schema: Schema): Schema | undefined {
  const def = definition(bare(schema).schema);
  return def.type === 'array' ? def.element : undefined;
}

/** The schema at a path inside a value; undefined where the schema does not say. */
export function schemaAt(schema: Schema, path: readonly PropertyKey[]): Schema | undefined {
  let at: Schema | undefined = schema;
  for (const step of path) {
    if (!at) return undefined;
    at = typeof step === 'number' ? elementOf(at) : ownOf(shapeOf(at), String(step));
  }
  return at;
}

function ownOf(shape: Shape | undefined, key: string): Schema | undefined {
  return shape && Object.hasOwn(shape, key) ? shape[key] : undefined;
}

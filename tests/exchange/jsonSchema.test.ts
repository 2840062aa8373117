import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readCarrybookFile, writeCarrybookFile } from '../../src/exchange/carrybookFile.ts';
import { carrybookJsonSchema, carrybookJsonSchemaText } from '../../src/exchange/jsonSchema.ts';
import { brokenFiles } from '../fixtures/brokenFiles.ts';
import { smallFile } from '../fixtures/smallFile.ts';
import { fileArbitrary } from './fileArbitrary.ts';
import { readValue } from './reading.ts';

const committed = readFileSync(new URL('../../public/carrybook-file.schema.json', import.meta.url), 'utf8');
// Formats need a further package; dates and instants are told by their patterns too.
const valid = new Ajv2020({ strict: true, allowUnionTypes: true, validateFormats: false }).compile(
  JSON.parse(committed),
);

test('the committed schema is the one that the reader checks by', () => {
  expect(committed).toBe(carrybookJsonSchemaText());
  expect(carrybookJsonSchema().$schema).toBe('https://json-schema.org/draft/2020-12/schema');
});

test('a good file fits the schema, as another program and as this one writes it', () => {
  expect(valid(smallFile()) ? [] : valid.errors).toEqual([]);
  const written = writeCarrybookFile(readValue(readCarrybookFile(JSON.stringify(smallFile()))));
  expect(valid(JSON.parse(written)) ? [] : valid.errors).toEqual([]);
});

test('whatever the reader takes fits the schema', () => {
  fc.assert(
    fc.property(fileArbitrary, (file) => {
      const source = JSON.parse(JSON.stringify(file));
      expect(valid(source) ? [] : valid.errors).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

test.each([
  'wrong format word',
  'newer version',
  'no player',
  'missing id',
  'wrong type deep inside',
  'negative carry',
  'no spec period',
  'bad wind',
  'bad swing',
  'a day that does not exist',
  'an instant without a zone',
  'name longer than 60',
  'id with a blank',
])('a file that is broken by its schema does not fit it: %s', (name) => {
  const broken = brokenFiles.find((file) => file.name === name);
  expect(valid(JSON.parse(broken?.text ?? ''))).toBe(false);
});

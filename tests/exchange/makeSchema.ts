import { writeFileSync } from 'node:fs';
import { carrybookJsonSchemaText } from '../../src/exchange/jsonSchema.ts';

// Run from the project's root by the schema:make script.
writeFileSync('public/carrybook-file.schema.json', carrybookJsonSchemaText());

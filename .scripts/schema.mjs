/** `npm run schema:make`: writes the JSON Schema of a Carrybook file, as the code has it, to public/. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installPackages } from './setup.mjs';

installPackages();
const { bundle, root } = await import('./bundle.mjs');
const { carrybookJsonSchemaText } = await import(pathToFileURL(await bundle('src/exchange/jsonSchema.ts')).href);
writeFileSync(join(root, 'public', 'carrybook-file.schema.json'), carrybookJsonSchemaText());

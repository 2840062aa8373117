/** `npm run --silent report -- FILE`: the same engine as the app, without a browser. Nothing but the report goes to stdout. */
import { run } from './run.mjs';

process.exitCode = await run('src/report.ts', process.argv.slice(2));

import { checkDocuments, writeDocuments } from './lib/generated-documents.mjs';
import { buildServer } from './lib/build-server.mjs';
import { generateClient } from './lib/generate-client.mjs';

/** The database client, and the parts of the documents that are made from code; with --check these are only compared. */
await generateClient();
await buildServer();
if (process.argv.includes('--check')) {
  const stale = await checkDocuments();
  if (stale.length) {
    console.error(`Not as the code would make it: ${stale.join(', ')}. Run: npm run generate`);
    process.exitCode = 1;
  } else console.log('The generated parts of the documents are up to date.');
} else {
  const written = await writeDocuments();
  console.log(written.length ? `Wrote ${written.join(', ')}.` : 'Everything was up to date.');
}

import { Db } from '#libs/platform/database/db';
import { openFileStore } from '#libs/platform/files/open-file-store';
import { readSettings } from '#libs/platform/settings/settings';
import { fillDemo } from './fill-demo.js';
import { writeSignIns } from './sign-ins.js';

const settings = readSettings();
// Nothing of the demo is lost for good, so its many small commits need not wait for the disk one by one.
const url = new URL(settings.database.worker ?? settings.database.owner);
url.searchParams.set('options', '-c synchronous_commit=off');
const db = new Db(url.href, { connections: 6 });
try {
  const orders = await fillDemo({ db, files: await openFileStore(settings), publicUrl: settings.publicUrl, now: new Date(), say: (line) => console.log(`  ${line}`) });
  if (orders === undefined) console.log('  The database has a scheme already; nothing was filled in.');
  else await writeSignIns(settings.dataFolder);
} finally {
  await db.close();
}

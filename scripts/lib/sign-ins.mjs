import fs from 'node:fs';
import path from 'node:path';

/** The demo's sign-ins, which the seed leaves in the data folder. */
export function printSignIns(folder) {
  const file = path.join(folder, 'demo-sign-ins.json');
  if (!fs.existsSync(file)) return;
  const people = JSON.parse(fs.readFileSync(file, 'utf8'));
  const width = Math.max(...people.map(({ email }) => email.length));
  console.log('\nDemo sign-ins (they exist in the demo alone):');
  for (const { email, password, role } of people) console.log(`  ${email.padEnd(width)}  ${password}  ${role}`);
}

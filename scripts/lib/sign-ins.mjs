import fs from 'node:fs';
import path from 'node:path';

/** The demo's sign-ins, which the seed leaves in the data folder. */
export function printSignIns(folder) {
  const people = JSON.parse(fs.readFileSync(path.join(folder, 'demo-sign-ins.json'), 'utf8'));
  const width = (of) => Math.max(...people.map((person) => of(person).length));
  const [mail, secret] = [width(({ email }) => email), width(({ password }) => password)];
  console.log('\nDemo sign-ins (they exist in the demo alone):');
  for (const { name, roles, home, email, password } of people) {
    console.log(`  ${email.padEnd(mail)}  ${password.padEnd(secret)}  ${name}, ${roles.join(' and ')}, ${home}`);
  }
}

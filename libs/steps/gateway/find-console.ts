import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';

/** An X-ray machine that is known to one practice; what it brings is written in its name. */
export interface Sender {
  practice: string;
  console: string;
  name: string;
}

/** Whom it calls, what it calls itself and where it stands must all be known to one practice, and to one alone. */
export async function findConsole({ db }: Pick<StepDeps, 'db'>, { called, calling, address }: { called: string; calling: string; address: string }): Promise<Sender | undefined> {
  const rows = await db.door<Sender>('SELECT practice, console, name FROM app.console_at($1, $2, $3::inet)', [called, calling, address]);
  const practices = new Set(rows.map((row) => row.practice));
  return practices.size === 1 ? rows[0] : undefined;
}

export const consoleActor = ({ practice, console, name }: Sender): Actor => ({ id: console, name, roles: ['queue'], practice });

import { freePort, isFree } from './ports.mjs';
import { say } from './say.mjs';

export const USUAL = 4180;

/** The port asked for, or the usual one, or any free one when somebody else has the usual one. */
export async function choosePort(asked) {
  if (asked !== undefined) {
    if (await isFree(Number(asked))) return asked;
    throw new Error(`Port ${asked} is taken by another program. Choose another one: npm start -- --port N`);
  }
  if (await isFree(USUAL)) return USUAL;
  say(`Port ${USUAL} is taken by another program; taking a free one.`);
  return freePort();
}

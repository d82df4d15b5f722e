import { freePort, isFree } from './ports.mjs';
import { say } from './say.mjs';

export const USUAL = 4180;
/** The port registered for DICOM. */
export const USUAL_GATEWAY = 11_112;

/** The port asked for, or the usual one, or any free one when somebody else has the usual one. */
export async function choosePort(asked, { usual = USUAL, option = '--port' } = {}) {
  if (asked !== undefined) {
    if (await isFree(Number(asked))) return asked;
    throw new Error(`Port ${asked} is taken by another program. Choose another one: npm start -- ${option} N`);
  }
  if (await isFree(usual)) return usual;
  say(`Port ${usual} is taken by another program; taking a free one.`);
  return freePort();
}

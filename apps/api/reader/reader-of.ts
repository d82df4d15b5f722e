import type { Reader } from '#libs/steps/reader-page/reader';
import { StepError } from '#libs/steps/record/step-error';
import type { Principal } from '../session/principal.js';

export function readerOf(who: Principal): Reader {
  if (!who.centre) throw new StepError('NOT_YOUR_ROLE');
  return { id: who.staff ?? 'link', name: who.staff ? who.name : (who.home ?? 'a reader'), centre: who.centre, centreName: who.home ?? '', onlyPackage: who.kind === 'readerLink' ? who.package : null };
}

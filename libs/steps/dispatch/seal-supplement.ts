import { useCase } from '../record/use-case.js';
import { sealPackage } from './seal-package.js';

/** A film that came in after sealing goes on its own, named as following the package that is out. */
export const sealSupplement = useCase('sealSupplement', (work, on) => {
  const base = work.facts('packageSealed').filter((f) => f.study === on && !f.supplements).at(-1);
  return sealPackage(work, on, base?.package);
});

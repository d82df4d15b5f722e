import { closureFacts } from '../centre/closure-facts.js';
import { useCase } from '../record/use-case.js';
import { sealPackage } from './seal-package.js';

/** A centre that is known to be closed holds the package from the moment at which it could be sent. */
export const seal = useCase('seal', async (work, on) => [...(await sealPackage(work, on)), ...(await closureFacts(work, work.evaluation.studies[on]!.centre))]);

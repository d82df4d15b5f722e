import { useCase } from '../record/use-case.js';

/** Goes on with what there is; the reason stands on the letter. */
export const settleViews = useCase('settleViews', (_work, on, input) => [{ type: 'viewsSettled', study: on, why: input.why }]);

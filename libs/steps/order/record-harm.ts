import { useCase } from '../record/use-case.js';

/** Silences what would be mailed, freezes the record and sets a legal hold: the pathway reads all of that off this one fact. */
export const recordHarm = useCase('recordHarm', (_work, _on, input) => [{ type: 'harmRecorded', what: input.what }]);

import { useCase } from '../record/use-case.js';
import { acceptedResult } from './accepted-result.js';
import { issueResult } from './issue-result.js';

/** The vet lets the letter go; who gets it is asked again, now and once more when it is sent. */
export const releaseLetter = useCase('releaseLetter', async (work, on) => [await issueResult(work, on, acceptedResult(work, on))]);

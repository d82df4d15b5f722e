import type { PageSentence } from '#libs/words/de/staff/page-words';
import { t } from './t.js';

type Choice<Id extends string> = { id: Id; name: PageSentence; hint?: PageSentence };

/** Choices that stand at the top of a file in English, said as they are shown. */
export const named = <Id extends string>(choices: readonly Choice<Id>[]) => choices.map(({ id, name, hint }) => ({ id, name: t(name), ...(hint && { hint: t(hint) }) }));

/** "a, b"; with semicolons where a name holds a comma of its own ("Hips, laxity; Elbows"), or nobody could count them. */
export const inAList = (names: readonly string[]): string => names.join(names.some((n) => n.includes(', ')) ? '; ' : ', ');

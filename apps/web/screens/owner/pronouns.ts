export interface Pronouns { she: string; her: string; hers: string }

/** "she is asleep", "we watch her", "her visit". */
export const pronouns = (sex: 'male' | 'female'): Pronouns => (sex === 'female' ? { she: 'she', her: 'her', hers: 'her' } : { she: 'he', her: 'him', hers: 'his' });

import type { OwnerPage } from '#libs/contracts/screens/owner';

/** "whether she will limp", "her visit"; other languages than English say the dog's name. */
export const pronouns = ({ name, sex }: OwnerPage['dog']) => (sex === 'female' ? { name, he: 'she', his: 'her' } : { name, he: 'he', his: 'his' });

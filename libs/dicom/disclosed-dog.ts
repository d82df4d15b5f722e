import { DOG, latin } from './dog-attributes.js';
import type { Part } from './parts.js';
import { codes, words } from './write-parts.js';

/** What a centre may know of a dog, and how the centre calls what it got. */
export interface DisclosedDog {
  /** The centre's handle, at most 16 signs: it stands as accession number, study id and the dog's name. */
  number: string;
  dog: { number: string; sex: 'male' | 'female'; neutered: boolean; breed: string };
}

/** What an object of an animal must have is there, and empty where it would name an owner or the dog's papers. */
export const disclosedDog = ({ number, dog }: DisclosedDog): Part[] => [
  words('x00080050', 'SH', number), words('x00080090', 'PN', ''), words('x00200010', 'SH', number),
  words('x00100010', 'PN', number), words('x00100020', 'LO', latin(dog.number).slice(0, 64)), words('x00100030', 'DA', ''),
  words('x00100040', 'CS', dog.sex === 'male' ? 'M' : 'F'), words('x00102203', 'CS', dog.neutered ? 'ALTERED' : 'UNALTERED'),
  words('x00102201', 'LO', 'Canine'), codes('x00102202', DOG), words('x00102292', 'LO', latin(dog.breed).slice(0, 64)),
  codes('x00102293'), codes('x00102294'), words('x00102297', 'PN', ''), words('x00102299', 'LO', ''),
];

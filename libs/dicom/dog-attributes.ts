/** A dog as machines know it. */
export interface DicomDog {
  /** Ours, stable for life. */
  animalId: string;
  /** Who gave that number. */
  issuer: string;
  /** In Latin letters. */
  name: string;
  owner: string;
  /** YYYY-MM-DD; left out where only a year or a guess is known. */
  born?: string;
  sex: 'male' | 'female';
  neutered: boolean;
  breed: string;
  transponders: string[];
  studBook: { book: string; number: string }[];
}

/** Consoles that know Latin alone show such a name; letters without a Latin form become a hyphen, never a gap. */
export const latin = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').replaceAll('ß', 'ss').replaceAll('ø', 'o').replaceAll('Ø', 'O').replaceAll('ł', 'l').replaceAll('Ł', 'L').replace(/æ/gi, 'ae').replace(/[^\x20-\x7e]/g, '-');

/** DICOM PS3.16, context group 7454; the number of SNOMED CT that DICOM lists. */
export const DOG = { value: '448771007', scheme: 'SCT', meaning: 'Canis lupus familiaris' };

const part = (text: string, most = 64): string => latin(text).replace(/[\\^=]/g, ' ').replace(/\s+/g, ' ').trim().slice(0, most);
export const dicomDay = (day: string): string => day.replaceAll('-', '');

/** A person's name as one practice writes it, "Ann Wist", in the order that DICOM wants: the last word is taken for the family's. */
export function personName(name: string): string {
  const words = part(name).split(' ');
  return [words.at(-1)!, words.slice(0, -1).join(' ')].filter(Boolean).join('^');
}

/** The name in the form for animals: the owner's family name, then the animal's (DICOM PS3.5 section 6.2.1.1). */
export const animalName = (owner: string, name: string): string => [part(owner).split(' ').at(-1)!.slice(0, 30), part(name, 30)].join('^');

/** The attributes of the patient by their keywords, as the worklist offers them and as our own files carry them. */
export function dogAttributes(dog: DicomDog): Record<string, unknown> {
  return {
    PatientName: animalName(dog.owner, dog.name),
    PatientID: part(dog.animalId),
    IssuerOfPatientID: part(dog.issuer),
    TypeOfPatientID: 'TEXT',
    ...(dog.transponders.length > 0 && { OtherPatientIDsSequence: dog.transponders.map((number) => ({ PatientID: part(number), IssuerOfPatientID: 'ISO 11784', TypeOfPatientID: 'RFID' })) }),
    PatientBirthDate: dog.born ? dicomDay(dog.born) : '',
    PatientSex: dog.sex === 'male' ? 'M' : 'F',
    PatientSexNeutered: dog.neutered ? 'ALTERED' : 'UNALTERED',
    PatientSpeciesDescription: 'Canine',
    PatientSpeciesCodeSequence: [{ CodeValue: DOG.value, CodingSchemeDesignator: DOG.scheme, CodeMeaning: DOG.meaning }],
    PatientBreedDescription: part(dog.breed),
    PatientBreedCodeSequence: [],
    BreedRegistrationSequence: dog.studBook.map(({ book, number }) => ({ BreedRegistrationNumber: part(number), BreedRegistryCodeSequence: [{ CodeValue: part(book, 16), CodingSchemeDesignator: '99COTYLA', CodeMeaning: part(book) }] })),
    ResponsiblePerson: personName(dog.owner),
    ResponsiblePersonRole: dog.owner ? 'OWNER' : '',
    ResponsibleOrganization: '',
  };
}

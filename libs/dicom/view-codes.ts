const code = (value: string, meaning: string) => ({ value, scheme: 'SCT', meaning });

/** Ways of the beam: as the trade writes them, and as DICOM PS3.16 lists them for animals (context group 7484; the numbers of SNOMED CT that DICOM lists). */
const BEAMS = {
  vd: { position: 'VD', code: code('442441009', 'Ventro-dorsal') },
  ml: { position: 'ML', code: code('399260004', 'Mediolateral') },
  cc: { position: 'CRCD', code: code('399162004', 'Cranio-caudal') },
} as const;

export type Beam = (typeof BEAMS)[keyof typeof BEAMS];

/** The way of the beam of a view that a protocol names, which is how its code begins; undefined of one that begins otherwise. */
export const beamOf = (viewCode: string): Beam | undefined => Object.entries(BEAMS).find(([begins]) => viewCode.startsWith(begins))?.[1];

/** Views from below and above show both hips, those of one limb an elbow. */
export const regionOf = (viewCode: string): 'hip' | 'elbow' => (viewCode.startsWith('vd') ? 'hip' : 'elbow');

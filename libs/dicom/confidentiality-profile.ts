/** What becomes of an element: kept (a sequence: item by item), taken out, left without a value, or filled with a word that says nothing. */
export type Action = 'keep' | 'remove' | 'empty' | 'dummy';

type Rows = Partial<Record<Exclude<Action, 'keep'>, string>>;

/**
 * DICOM PS3.15 table E.1-1, column "Basic Profile", edition 2026d, of the groups that a radiograph needs; X with any alternative is
 * taken out. Rows for UIDs and for dates are not listed: those go by their kind. All other groups go as a whole, which is more than the
 * table asks: overlays, small pictures, annotations, signatures, trials, admissions, and every private group.
 */
const BASIC_PROFILE: Record<string, Rows> = {
  '0008': {
    remove: `0054 0055 0080 0081 0082 0092 0094 0096 009d 1000 1010 1030 103e 1040 1041 1048 1049 1050 1052 1060 1062 1070 1072 1080 1084 1088 1110 1111
      1120 1140 1301 1302 1303 1304 2111 2112 4000`,
    empty: '0050 0090 009c',
  },
  '0010': {
    remove: `0011 0012 0013 0014 0015 0016 0021 0032 0041 0042 0043 0044 0045 0046 0047 0050 0101 0102 1000 1001 1002 1005 1010 1020 1030 1040 1050 1060
      1080 1081 1090 1100 2000 2110 2150 2152 2154 2155 2160 2161 2162 2180 21a0 21b0 21c0 21d0 21f0 2203 2297 2299 4000`,
    empty: '0010 0020 0030 0040',
  },
  '0018': {
    remove: `1000 1004 1005 1007 1008 1009 100a 1010 1011 1030 1400 4000 5011 700a 9185 9373 937b 937f 9424 9937 a003`,
    empty: '0010',
    dummy: '11bb 9367 9371 9623',
  },
  '0020': { remove: '0027 3401 3406 4000 9158', empty: '0010' },
  '0028': { remove: '4000' },
  '0040': {
    remove: `0001 0006 0007 0009 000b 0010 0011 0012 0241 0242 0243 0253 0254 0275 0280 0310 050a 051a 0556 0600 0602 06fa 1001 1002 1004 1005 100a 1010 1011
      1102 1103 1104 1400 2001 2008 2009 2010 2011 2400 3001 4025 4027 4028 4030 4034 4035 4036 4037 a078 a07a a07c a307 a352 a353 a354 a358
      b020 b03b b03f db06 db07 e012`,
    empty: '0513 0555 0562 0610 2016 2017 a088',
    dummy: '0512 0551 1101 a027 a073 a075 a123 a730',
  },
  '0054': {},
  '2050': {},
  '7fe0': {},
};

/** Two options of the table: patient characteristics (sex, age, size, weight, neutered) and longitudinal information with full dates (here, the offset to UTC beside all that is a day or a time). */
const KEPT_BY_OPTION = new Set(['x00100040', 'x00101010', 'x00101020', 'x00101030', 'x00102203', 'x00080201']);
const DATES = new Set(['DA', 'TM', 'DT']);

/** The birth of a dog identifies it; that it was X-rayed on some day does not. */
const OF_THE_PATIENT = 'x0010';

/** Animals came into the standard after its table: who registered the dog, by which number, and what the owner is to it. */
const OF_ANIMALS = new Set(['x00100024', 'x00100022', 'x00102294', 'x00102295', 'x00102296', 'x00102298']);

/** Free words that the table does not list may say anything; these say what the picture is and how it is to be seen. */
const WORDS = new Set(['LO', 'LT', 'PN', 'SH', 'ST', 'UC', 'UR', 'UT', 'AE', 'UN']);
/** Numbers of 64 bits: tables of where the frames of long films begin, which one picture does not need and older programs stumble over. */
const LARGE = new Set(['OV', 'SV', 'UV']);
const KNOWN_WORDS = new Set([
  'x00080070', 'x00080100', 'x00080102', 'x00080103', 'x00080104', 'x00080119', 'x00080120', 'x00102201', 'x00102292', 'x00280a04', 'x00281054', 'x00281055', 'x00283002', 'x00283003', 'x00283004',
]);

const listed = new Map<string, Action>();
for (const [group, rows] of Object.entries(BASIC_PROFILE)) for (const [action, elements] of Object.entries(rows)) for (const element of elements.trim().split(/\s+/)) listed.set(`x${group}${element}`, action as Action);

/** `tag` as in `x00100010`. */
export function actionOn(tag: string, vr: string): Action {
  if (!(tag.slice(1, 5) in BASIC_PROFILE) || tag.endsWith('0000') || OF_ANIMALS.has(tag) || LARGE.has(vr)) return 'remove';
  if (KEPT_BY_OPTION.has(tag) || (DATES.has(vr) && !tag.startsWith(OF_THE_PATIENT))) return 'keep';
  return listed.get(tag) ?? (WORDS.has(vr) && !KNOWN_WORDS.has(tag) ? 'remove' : 'keep');
}

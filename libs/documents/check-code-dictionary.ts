/**
 * Words that most certificates print, given to the compressor beforehand: it halves the code, and a coarse code is one
 * that a telephone reads off a creased paper. Part of format 1 and published with the key: never changed, since papers
 * in people's drawers were packed with it. Another wording needs no change here, it only packs less well.
 */
export const DICTIONARY_1 = Buffer.from(
  [
    '["cotyla certificate 1",["Paper","Statement of a screening result"],["Paper","Certificate"],["From","',
    ' states what the reader found. The original of  is attached, untouched."],["Dog","],["Stud book","not entered"],',
    '["Breed, sex",", female"],["Breed, sex",", male"],["Born"," 2024"],["Transponder","999 000 001"],',
    '["Read at imaging by","],["Known at imaging by","],["Pictures"," 2026"],["Age that day"," years  months"],',
    '["Earlier operation","none, as the owner states"],["Asleep for them","yes, sedation"],["Issued","',
    'January February March April May June July August September October November December 2026"],',
    '["Hips, laxity","hip laxity by stress radiography, version 4"],',
    '["Hips, extended view","extended-view hip grading, version , criteria of 2022"],',
    '["Elbows","elbow arthrosis grading, version "],["Left hip","],["Right hip","Signs of arthritis were seen."],',
    '["Left elbow","grade 0; no primary lesion seen"],["Right elbow","],["Left hip","grade B; Norberg angle 1"],',
    '["Right hip","not readable: "],["For the dog","grade 1, the worse hip elbow speaks for the dog"],',
    '["For the dog","0., the looser hip speaks for the dog"],["For the dog","at least grade B, one hip could not be read"],',
    '["Reading","Read by the centre’s reader ; signed for the centre on "],["Serial","',
  ].join(''),
);

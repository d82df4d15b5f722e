import type { Language } from '#libs/words/languages';

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

/** The same for German papers. */
const GERMAN = Buffer.from(
  [
    '["cotyla certificate 1 de",["Papier","Mitteilung eines Untersuchungsergebnisses"],["Papier","Bescheinigung"],["Von","',
    ', für: das Untersuchungsprogramm ausgestellt durch  teilt mit, was die Auswertung ergeben hat. Das Original von  liegt unverändert bei."],',
    '["Hund"],["Zuchtbuch","nicht eingetragen"],["Rasse, Geschlecht",", Hündin"],["Rasse, Geschlecht",", Rüde"],["Geboren",". 2024"],',
    '["Transponder","keiner"],["Transponder","999 000 001"],["Beim Röntgen erkannt","wie im Auftrag steht"],["Beim Röntgen gelesen","',
    '["Bilder",". 2026"],["Alter an dem Tag"," Jahre  Monate"],["Frühere Operation","keine, laut Besitzerin/Besitzer"],',
    '["Dabei geschlafen","ja, Sedierung"],["Ausgestellt",". Januar Februar März April Mai Juni Juli August September Oktober November Dezember 2026"],',
    '["Hüften, Lockerheit","Lockerheit der Hüfte, Röntgen unter Belastung, Version 4"],',
    '["Hüften, gestreckt","Beurteilung der Hüfte auf dem gestreckten Bild, Version , Kriterien von 2022"],',
    '["Ellbogen","Beurteilung der Ellbogen, Version "],["Linke Hüfte","0.],["Rechte Hüfte","Es wurden Zeichen von Arthrose gesehen. Der Wert bleibt; er wird nicht mit anderen Hunden verglichen."],',
    '["Linker Ellbogen","Grad 0; Ursprüngliche Veränderung: keine gesehen"],["Rechter Ellbogen","],["Linke Hüfte","Grad B; Norberg-Winkel 1"],["Rechte Hüfte","nicht beurteilbar: ',
    '["Für den Hund","Grad 1 (rechts, der schlechtere Ellbogen)"],["Für den Hund","Grad B (links, die schlechtere Hüfte)"],["Für den Hund","0, (rechts, die lockerere Hüfte)"],',
    '["Für den Hund","mindestens Grad B (links; die rechte Hüfte konnte nicht beurteilt werden)"],',
    '["Beurteilung","Beurteilt von einer Fachperson der Stelle; für die Stelle unterschrieben am "],["Nummer","',
  ].join(''),
);

/** A language has one before its first paper is printed. */
export const DICTIONARIES: Record<Language, Buffer> = { en: DICTIONARY_1, de: GERMAN };

/** The public check of a paper. */
export const certificate = {
  'check of a paper': 'Prüfung eines Papiers',
  'No paper has the number {number}.': 'Kein Papier hat die Nummer {number}.',
  'Compare it with the paper, sign by sign. If it is the same, this server did not issue that paper: ask the practice or the reading centre named on it.':
    'Vergleichen Sie sie mit dem Papier, Zeichen für Zeichen. Ist sie dieselbe, hat dieser Server das Papier nicht ausgestellt: Fragen Sie die Praxis oder die Auswertungsstelle, die darauf steht.',
  'the paper': 'das Papier',
  'Look at the one that stands, {number}': 'Das geltende ansehen, {number}',
  'If one line below differs from the paper, the paper was changed.': 'Weicht eine Zeile hier unten vom Papier ab, dann wurde das Papier verändert.',
  'Checking a paper without this server': 'Ein Papier ohne diesen Server prüfen',
  'The square code on the paper holds the facts themselves and a signature over them{algorithm}. Whoever keeps the public key below can check the two against each other without a network: if one letter was changed, they no longer fit. What the code cannot say is whether the paper was amended or withdrawn later; only this page can.':
    'Das quadratische Zeichen auf dem Papier enthält die Angaben selbst und eine Unterschrift darüber{algorithm}. Wer den öffentlichen Schlüssel unten aufbewahrt, kann beides ohne Netz miteinander vergleichen: Wurde ein Buchstabe geändert, passen sie nicht mehr zusammen. Was das Zeichen nicht sagen kann, ist, ob das Papier später berichtigt oder zurückgezogen wurde; das kann nur diese Seite.',
  'Public key': 'Öffentlicher Schlüssel',
  'Keep the key as a file': 'Den Schlüssel als Datei aufbewahren',
  'issued {day} by {issuer}': 'ausgestellt am {day} von {issuer}',
  'The paper is written in {language}. Each line stands here as it is printed, and below it what it says.':
    'Das Papier ist auf {language} geschrieben. Jede Zeile steht hier so, wie sie gedruckt ist, und darunter, was sie sagt.',
  'What it does not tell': 'Was es nicht sagt',
  'It still stands.': 'Es gilt noch.',
  'A newer one has taken its place.': 'Ein neueres ist an seine Stelle getreten.',
  'It has been withdrawn.': 'Es wurde zurückgezogen.',
} as const;

/** How long results take, what came back, and how well readers agree. */
export const readers = {
  'Packages sent back of 100, by packages sent': 'Zurückgeschickte Sendungen von 100, nach Zahl der Sendungen',
  '{parts}. All together {centre} of 100.': '{parts}. Alle zusammen: {centre} von 100.',
  'packages sent': 'Sendungen',
  'Packages sent back, by size of practice': 'Zurückgeschickte Sendungen, nach Größe der Praxis',
  'Two readers gave the same grade to **{share} of 100** films.': 'Zwei auswertende Personen gaben bei **{share} von 100** Bildern denselben Grad.',
  '{films} films, {readers} readers, grades given: {grades}.': '{films} Bilder, {readers} auswertende Personen, gegebene Grade: {grades}.',
  'With fewer than 30 films this is wide.': 'Bei weniger als 30 Bildern ist das weit.',
  Kappa: 'Kappa',
  Found: 'Gefunden',
  'cannot be said: one grade alone': 'lässt sich nicht sagen: nur ein Grad',
  '95 % interval': '95-%-Bereich',
  'none given': 'keiner angegeben',
  '{source} 1 is full agreement, 0 what chance would give. With few films, or grades that hardly occur, it says little; names for its ranges are a convention, so none is given.':
    '{source} 1 ist volle Übereinstimmung, 0 gäbe der Zufall. Bei wenigen Bildern, oder bei Graden, die kaum vorkommen, sagt es wenig; Namen für seine Bereiche sind Übereinkunft, darum steht hier keiner.',
  'Cohen, Psychol Bull 1968;70:213-220; error by Fleiss, Cohen and Everitt, Psychol Bull 1969;72:323-327.':
    'Cohen, Psychol Bull 1968;70:213-220; Fehler nach Fleiss, Cohen und Everitt, Psychol Bull 1969;72:323-327.',
  'cannot be said': 'lässt sich nicht sagen',
  'no interval': 'kein Bereich',
  'Agreement: one reader for another': 'Übereinstimmung: eine auswertende Person anstelle einer anderen',
  'Consistency: a reader who always reads higher does no harm': 'Stetigkeit: Wer immer höher misst, schadet nicht',
  'One reading of any reader, readers not told apart': 'Eine Beurteilung irgendeiner Person, ohne sie zu unterscheiden',
  'Agreement of the mean of these {readers} readers': 'Übereinstimmung des Mittels dieser {readers} Personen',
  'Two readings of one film differ by less than **{value}** in 95 of 100 pairs.':
    'Zwei Beurteilungen eines Bildes unterscheiden sich in 95 von 100 Paaren um weniger als **{value}**.',
  '{films} films, {readers} readers. Within one film the readings have a standard deviation of {sd} ({lower} to {upper}).':
    '{films} Bilder, {readers} auswertende Personen. Innerhalb eines Bildes haben die Beurteilungen eine Standardabweichung von {sd} ({lower} bis {upper}).',
  'With fewer than 30 films all this is wide.': 'Bei weniger als 30 Bildern ist all das weit.',
  'Intraclass correlations': 'Intraklassen-Korrelationen',
  'Intraclass correlation': 'Intraklassen-Korrelation',
  'Shrout and Fleiss, Psychol Bull 1979;86:420-428. A correlation is high as soon as the films differ much: it is no agreement by itself.':
    'Shrout und Fleiss, Psychol Bull 1979;86:420-428. Eine Korrelation ist hoch, sobald sich die Bilder stark unterscheiden: Für sich allein ist sie keine Übereinstimmung.',
  'Upper limit': 'Obere Grenze',
  'Mean difference': 'Mittlerer Unterschied',
  'Lower limit': 'Untere Grenze',
  '{parts}. {count} films.': '{parts}. {count} Bilder.',
  '{what} {value}, may be {lower} to {upper}': '{what} {value}, kann {lower} bis {upper} sein',
  'First reader less second reader, film by film': 'Erste Beurteilung minus zweite, Bild für Bild',
  'mean of both, {measure}': 'Mittel beider, {measure}',
  difference: 'Unterschied',
  'Limits of agreement': 'Grenzen der Übereinstimmung',
  'First less second': 'Erste minus zweite',
  'quarter of sending': 'Quartal der Sendung',
  'Packages sent back of 100, by quarter of sending': 'Zurückgeschickte Sendungen von 100, nach Quartal der Sendung',
  'Packages sent back, by quarter': 'Zurückgeschickte Sendungen, nach Quartal',
  Quarter: 'Quartal',
  'times and readings': 'Zeiten und Beurteilungen',
  'Counted {asOf}, over all practices and centres. Nobody is named or ranked.':
    'Gezählt: {asOf}, über alle Praxen und Auswertungsstellen. Niemand ist genannt oder in eine Rangfolge gebracht.',
  'Films that were taken again': 'Bilder, die wiederholt wurden',
  'of those that somebody judged in the last three years': 'von denen, die jemand in den letzten drei Jahren angesehen hat',
  'No film has been judged yet.': 'Es wurde noch kein Bild angesehen.',
  '**{again} of {films, plural, one {# film} other {# films}}**, which may be {lower} to {upper} of every 100 (Wilson, 95 %).':
    '**{again} von {films, plural, one {# Bild} other {# Bildern}}**; das können {lower} bis {upper} von je 100 sein (Wilson, 95 %).',
  'Why: {reasons}.': 'Warum: {reasons}.',
  'Fewer than five films have been judged: too few to say anything.': 'Weniger als fünf Bilder wurden angesehen: zu wenige, um etwas zu sagen.',
  'Many retakes keep dogs asleep longer; none at all may mean that nobody looks closely. No practice is told apart here.':
    'Viele Wiederholungen lassen Hunde länger schlafen; gar keine kann heißen, dass niemand genau hinsieht. Hier wird keine Praxis von einer anderen unterschieden.',
  'Films that were sent back': 'Bilder, die zurückgeschickt wurden',
  'Too few packages have been sent in any quarter to say anything: five are the least.':
    'In keinem Quartal gab es genug Sendungen, um etwas zu sagen: Fünf sind das wenigste.',
  'packages of the last three years': 'Sendungen der letzten drei Jahre',
  '**{share} of every 100 packages** came back from the readers.': '**{share} von je 100 Sendungen** kamen von der Auswertung zurück.',
  'By quarter of sending': 'Nach Quartal der Sendung',
  'Limits of three standard deviations around all together, whole packages where a quarter is small (NIST/SEMATECH e-Handbook 6.3.3.2).':
    'Grenzen von drei Standardabweichungen um alle zusammen, in ganzen Sendungen, wo ein Quartal klein ist (NIST/SEMATECH e-Handbook 6.3.3.2).',
  '{quarters, plural, one {# quarter with fewer than five packages is} other {# quarters with fewer than five packages are}} not shown.':
    '{quarters, plural, one {# Quartal mit weniger als fünf Sendungen ist} other {# Quartale mit weniger als fünf Sendungen sind}} nicht gezeigt.',
  'By size of practice': 'Nach Größe der Praxis',
  'Fewer than five practices have sent five packages: each would be known, and so few cannot be told from chance.':
    'Weniger als fünf Praxen haben fünf Sendungen geschickt: Jede wäre zu erkennen, und so wenige lassen sich nicht vom Zufall unterscheiden.',
  'One disc a practice, without its name. All lie within what chance alone would do. It is no ranking; none sent back at all is a question too.':
    'Ein Punkt je Praxis, ohne ihren Namen. Alle liegen innerhalb dessen, was der Zufall allein täte. Es ist keine Rangfolge; gar keine zurückgeschickt zu bekommen ist auch eine Frage.',
  'One disc a practice, without its name. {beyond, plural, one {# of {count} lies} other {# of {count} lie}} beyond chance. It is no ranking; none sent back at all is a question too.':
    'Ein Punkt je Praxis, ohne ihren Namen. {beyond, plural, one {# von {count} liegt} other {# von {count} liegen}} außerhalb des Zufalls. Es ist keine Rangfolge; gar keine zurückgeschickt zu bekommen ist auch eine Frage.',
  'Limits of 95 of 100 (Spiegelhalter, Stat Med 2005;24:1185-1202), by whole packages where a practice sent few.':
    'Grenzen von 95 von 100 (Spiegelhalter, Stat Med 2005;24:1185-1202), in ganzen Sendungen, wo eine Praxis wenige geschickt hat.',
  '{practices, plural, one {# practice with fewer than five packages is} other {# practices with fewer than five packages are}} not shown.':
    '{practices, plural, one {# Praxis mit weniger als fünf Sendungen ist} other {# Praxen mit weniger als fünf Sendungen sind}} nicht gezeigt.',
  'How well readers agree': 'Wie gut Auswertende übereinstimmen',
  'Paste a table of a reading round: a line for each film, a column for each reader. Names are not needed and nothing is kept.':
    'Fügen Sie die Tabelle einer gemeinsamen Beurteilung ein: eine Zeile je Bild, eine Spalte je auswertender Person. Namen braucht es nicht, und nichts wird behalten.',
  'Show how well they agree': 'Zeigen, wie gut sie übereinstimmen',
  Readings: 'Beurteilungen',
  'Parted by tabs, semicolons or spaces. Only films that every reader read.':
    'Getrennt durch Tabulatoren, Strichpunkte oder Leerzeichen. Nur Bilder, die alle beurteilt haben.',
  'How long a result takes': 'Wie lange ein Ergebnis dauert',
  'studies first sent in the last three years': 'Untersuchungen, zum ersten Mal eingeschickt in den letzten drei Jahren',
  'Nothing has been sent yet': 'Es wurde noch nichts eingeschickt',
  'As soon as films go to a reading centre, the days until their result are counted here.':
    'Sobald Bilder an eine Auswertungsstelle gehen, werden hier die Tage bis zum Ergebnis gezählt.',
  'Fewer than five studies have been sent: too few to say anything.':
    'Weniger als fünf Untersuchungen wurden eingeschickt: zu wenige, um etwas zu sagen.',
  'days since sending': 'Tage seit dem Einschicken',
  'Not yet half of them have a result.': 'Noch nicht die Hälfte hat ein Ergebnis.',
  'Of 100 studies sent, so many have a result. {days}. {half}': 'Von 100 eingeschickten Untersuchungen haben so viele ein Ergebnis. {days}. {half}',
  'Day {day}: {share}': 'Tag {day}: {share}',
  '{n, plural, one {# study} other {# studies}} sent, of which {open, plural, one {# has no result and is counted for as long as it has} other {# have no result and are counted for as long as they have}} waited.':
    '{n, plural, one {# Untersuchung} other {# Untersuchungen}} eingeschickt, davon {open, plural, one {hat # kein Ergebnis und ist so lange gezählt, wie sie} other {haben # kein Ergebnis und sind so lange gezählt, wie sie}} gewartet {open, plural, one {hat} other {haben}}.',
  'So few say little.': 'So wenige sagen wenig.',
  '{study}: of 100 studies sent, how many have a result, by day':
    '{study}: wie viele von 100 eingeschickten Untersuchungen ein Ergebnis haben, nach Tagen',
  'The band is the 95 % interval (Kaplan and Meier’s curve, Greenwood’s error); ticks are studies still open. Films that were sent back go on counting from their first sending.':
    'Das Band ist der 95-%-Bereich (Kurve nach Kaplan und Meier, Fehler nach Greenwood); Striche sind Untersuchungen, die noch offen sind. Zurückgeschickte Bilder zählen ab dem ersten Einschicken weiter.',
  'Half have a result by day {day}; that day may be {lower} or any later one.':
    'Die Hälfte hat an Tag {day} ein Ergebnis; dieser Tag kann {lower} oder jeder spätere sein.',
  'Half have a result by day {day}.': 'Die Hälfte hat an Tag {day} ein Ergebnis.',
  'Half have a result by day {day}; that day may be any from {lower} to {upper}.':
    'Die Hälfte hat an Tag {day} ein Ergebnis; dieser Tag kann jeder von {lower} bis {upper} sein.',
  '{study}: results by day since sending': '{study}: Ergebnisse nach Tagen seit dem Einschicken',
  'Of 100 have a result': 'Von 100 haben ein Ergebnis',
  'all have': 'alle haben eines',
  '{cases} of {of} sent back, {beyond}': '{cases} von {of} zurückgeschickt, {beyond}',
  '{cases} of {of} sent back': '{cases} von {of} zurückgeschickt',
  'Sent back': 'Zurückgeschickt',
  'Chance alone: of 100': 'Zufall allein: von 100',
  'Beyond chance': 'Außerhalb des Zufalls',
  'more than chance': 'mehr als der Zufall',
  'fewer than chance: ask too': 'weniger als der Zufall: auch hier fragen',
} as const;

/** A breed on one day, and what choosing a share of it would do. */
export const breeds = {
  'Take the number back': 'Die Zahl zurücknehmen',
  'Write down these births': 'Diese Geburten aufschreiben',
  'Born in the year': 'Geboren im Jahr',
  'Pups born': 'Geborene Welpen',
  'Of this breed, in the scheme’s country, alive or not.': 'Von dieser Rasse, im Land des Programms, lebend oder nicht.',
  pups: 'Welpen',
  'Why it is taken back': 'Warum sie zurückgenommen wird',
  'Where the number comes from': 'Woher die Zahl kommt',
  'The book, its page and its date, so that somebody else can look.': 'Das Buch, die Seite und das Datum, damit jemand anders nachsehen kann.',
  'No number: take back what was written down of that year': 'Keine Zahl: zurücknehmen, was zu diesem Jahr aufgeschrieben war',
  'How many were born': 'Wie viele geboren wurden',
  'in the scheme’s country': 'im Land des Programms',
  'Nobody has written down yet how many pups of this breed were born, so the share that was screened is not known.':
    'Noch hat niemand aufgeschrieben, wie viele Welpen dieser Rasse geboren wurden. Darum ist nicht bekannt, welcher Anteil untersucht wurde.',
  'Pups born by year': 'Geborene Welpen nach Jahr',
  'Born in': 'Geboren',
  Pups: 'Welpen',
  'Written down': 'Aufgeschrieben',
  'Written down for {year}, with your name and today’s date.': 'Für {year} aufgeschrieben, mit Ihrem Namen und dem Datum von heute.',
  'taken back': 'zurückgenommen',
  'Before: {pups}, {source} ({day}, {name})': 'Davor: {pups}, {source} ({day}, {name})',
  'The sets in force': 'Die geltenden Zusammenstellungen',
  'the breed': 'die Rasse',
  'in {year}': '{year}',
  'from {first} to {last}': '{first} bis {last}',
  '{study}. {dogs} dogs, X-rayed {age}, {years}. Counted on {day}; not changed since.':
    '{study}. {dogs} Hunde, geröntgt: {age}, {years}. Gezählt am {day}; seitdem nicht geändert.',
  'All breeds': 'Alle Rassen',
  'The counts of this set, for a spreadsheet': 'Die Zahlen dieser Zusammenstellung, für eine Tabelle',
  'How the breed lies': 'Wie die Rasse liegt',
  '**Not shown for {n} dogs.** A picture of fewer than twenty would mislead. It is drawn from twenty dogs on.':
    '**Bei {n} Hunden nicht gezeigt.** Ein Bild von weniger als zwanzig führt in die Irre. Es wird ab zwanzig Hunden gezeichnet.',
  'These are fewer than 120 dogs, so every figure below may still change a lot.':
    'Das sind weniger als 120 Hunde; jede Zahl unten kann sich also noch stark ändern.',
  'the breeds': 'die Rassen',
  'Each as it was counted on one day. No dog, no owner and no practice is in a set.':
    'Jede so, wie sie an einem Tag gezählt wurde. Kein Hund, kein Mensch und keine Praxis steht in einer Zusammenstellung.',
  'Sets in force': 'Geltende Zusammenstellungen',
  'No set yet': 'Noch keine Zusammenstellung',
  'A breed is shown from five dogs on that were read and whose owners agreed. Sets are frozen at the turn of the year, or when you say so.':
    'Eine Rasse wird ab fünf Hunden gezeigt, die beurteilt wurden und deren Besitzerinnen und Besitzer zugestimmt haben. Zusammenstellungen werden zum Jahreswechsel festgehalten, oder wenn Sie es sagen.',
  'Counted on': 'Gezählt am',
  'Freezing new sets': 'Neue Zusammenstellungen festhalten',
  'Last on {day}, by {person}: {frozen, plural, one {# new set} other {# new sets}}, {waiting} as they were.':
    'Zuletzt am {day}, von {person}: {frozen, plural, one {# neue Zusammenstellung} other {# neue Zusammenstellungen}}, {waiting} wie bisher.',
  'A set stays as it is. Papers name its day, and a dog’s place on its paper never moves. A new one is made where five or more dogs have come or left, so that nobody can read one dog’s value from two sets. Where one to four have left, so many others sit out that five have.':
    'Eine Zusammenstellung bleibt, wie sie ist. Papiere nennen ihren Tag, und der Platz eines Hundes auf seinem Papier verschiebt sich nie. Eine neue entsteht, wo fünf oder mehr Hunde dazugekommen oder gegangen sind, damit niemand aus zwei Zusammenstellungen den Wert eines Hundes lesen kann. Wo ein bis vier gegangen sind, setzen so viele andere aus, dass es fünf sind.',
  'Asked for, with your name and today’s date. Everything is counted anew first; this page shows the new sets when they are there.':
    'Angefordert, mit Ihrem Namen und dem Datum von heute. Zuerst wird alles neu gezählt; diese Seite zeigt die neuen Zusammenstellungen, wenn sie da sind.',
  'Freeze what may be frozen now': 'Festhalten, was jetzt festgehalten werden darf',
  share: 'Anteil',
  'A rising step curve of {n} dogs from {first} to {last}. Half of the dogs lie at or below {middle}. The band around it holds each point of the curve with 95 % certainty.':
    'Eine steigende Stufenkurve von {n} Hunden, {first} bis {last}. Die Hälfte der Hunde liegt bei {middle} oder darunter. Das Band darum enthält jeden Punkt der Kurve mit 95 % Sicherheit.',
  'Share of dogs at or below each {value}': 'Anteil der Hunde bei oder unter jedem Wert: {value}',
  'The curve in numbers': 'Die Kurve in Zahlen',
  'Share at or below': 'Anteil bei oder darunter',
  Interval: 'Bereich',
  '{lower} to {upper}': '{lower} bis {upper}',
  'Dogs by grade': 'Hunde nach Grad',
  'Grade of the dog': 'Grad des Hundes',
  'Of every 20': 'Von je 20',
  'May be': 'Kann sein',
  '{value}. In brackets the 95 % interval of such dogs; no shape of the values is assumed. The worse of two joints is a little higher than either, by the reading’s error alone.':
    '{value}. In Klammern der 95-%-Bereich für solche Hunde; eine Form der Verteilung wird nicht angenommen. Das schlechtere von zwei Gelenken liegt allein durch die Messunsicherheit etwas höher als jedes einzelne.',
  'How the {value} lies': 'Wie die Werte liegen: {value}',
  'Of the dogs': 'Von den Hunden',
  'of every 20 born': 'von je 20 Geborenen',
  'Of every 20 pups born, in this set: {years}.': 'Von je 20 geborenen Welpen in dieser Zusammenstellung: {years}.',
  'Of every 20 pups born, in this set, by birth year': 'Von je 20 geborenen Welpen in dieser Zusammenstellung, nach Geburtsjahr',
  'not known': 'nicht bekannt',
  'more than born': 'mehr als geboren',
  'In this set, of those born, by birth year': 'In dieser Zusammenstellung, von den Geborenen, nach Geburtsjahr',
  'In this set': 'In dieser Zusammenstellung',
  'Of every 20 born': 'Von je 20 Geborenen',
  'From one birth year to the next': 'Von einem Geburtsjahr zum nächsten',
  'Born {years}, in this set of every 20 pups born: {share}.': 'Geboren {years}, in dieser Zusammenstellung von je 20 geborenen Welpen: {share}.',
  'All at one age. It tells of the dogs whose films were sent: a line falls when the dogs change, and also when other dogs are sent.':
    'Alle in einem Alter. Es erzählt von den Hunden, deren Bilder eingeschickt wurden: Eine Linie fällt, wenn sich die Hunde ändern, und auch, wenn andere Hunde eingeschickt werden.',
  'The middle of each birth year': 'Die Mitte jedes Geburtsjahres',
  'There are too few dogs to show birth years apart, or beside how many were born.':
    'Es sind zu wenige Hunde, um Geburtsjahre getrennt oder neben der Zahl der Geborenen zu zeigen.',
  'Which share of those born these are is not known: nobody has written down how many pups were born.':
    'Welcher Anteil der Geborenen das ist, ist nicht bekannt: Niemand hat aufgeschrieben, wie viele Welpen geboren wurden.',
  'Of every 20 pups born, in this set': 'Von je 20 geborenen Welpen in dieser Zusammenstellung',
  '**More dogs are in the set than are said to have been born** ({years}). Dogs born in another country may be among them, or the number of births is too low. No share can be told from it.':
    '**In der Zusammenstellung sind mehr Hunde, als geboren worden sein sollen** ({years}). Hunde aus einem anderen Land können darunter sein, oder die Zahl der Geburten ist zu niedrig. Daraus lässt sich kein Anteil angeben.',
  'Those in this set, read at this age and with their owners’ yes, of the pups born in the scheme’s country. Dogs X-rayed at another age or never sent are not among them, dogs born elsewhere may be. The interval is of years like these; it does not know of a wrong number of births.':
    'Die Hunde dieser Zusammenstellung, in diesem Alter beurteilt und mit dem Ja ihrer Besitzerinnen und Besitzer, von den im Land des Programms geborenen Welpen. Hunde, die in einem anderen Alter geröntgt oder nie eingeschickt wurden, sind nicht darunter; anderswo geborene können es sein. Der Bereich gilt für Jahre wie diese; von einer falschen Zahl der Geburten weiß er nichts.',
  'Too few dogs or years for a trend: it takes 60 dogs of four birth years.':
    'Zu wenige Hunde oder Jahre für einen Verlauf: Es braucht 60 Hunde aus vier Geburtsjahren.',
  'minus {number}': 'minus {number}',
  'may be {lower} to {upper} a year, {n} dogs born {from} to {to}': 'kann {lower} bis {upper} im Jahr sein, {n} Hunde, geboren {from} bis {to}',
  'No change of the {value} can be told: {perYear} a year, {range}.':
    'Eine Änderung lässt sich nicht erkennen ({value}): {perYear} im Jahr, {range}.',
  'The {value} {way, select, down {falls} other {rises}} by {perYear} a year ({range}).':
    '{value}: {way, select, down {fällt} other {steigt}} um {perYear} im Jahr ({range}).',
  'Median {value} by birth year: {years}.': 'Median nach Geburtsjahr, {value}: {years}.',
  'Median {value} by birth year': 'Median nach Geburtsjahr: {value}',
  'Median by birth year': 'Median nach Geburtsjahr',
  Median: 'Median',
  'Who is in it, and who is missing': 'Wer darin ist, und wer fehlt',
  'Fewer than 5 more dogs were X-rayed and not sent.': 'Weniger als 5 weitere Hunde wurden geröntgt und nicht eingeschickt.',
  '**{unsent} more dogs were X-rayed and their films never sent.** Of every 20 that were X-rayed, {share} are among the {n} ({lower} to {upper}). Where films stay at home, the breed looks better than it is.':
    '**{unsent} weitere Hunde wurden geröntgt, und ihre Bilder wurden nie eingeschickt.** Von je 20, die geröntgt wurden, sind {share} unter den {n} ({lower} bis {upper}). Wo Bilder zu Hause bleiben, sieht die Rasse besser aus, als sie ist.',
  'Who sent the films is not shown: one of the groups is so small that it could be told.':
    'Wer die Bilder geschickt hat, wird nicht gezeigt: Eine der Gruppen ist so klein, dass man sie erkennen könnte.',
  'None came with its whole litter: somebody chose each of these dogs.':
    'Keiner kam mit seinem ganzen Wurf: Jeden dieser Hunde hat jemand ausgewählt.',
  'All came with their whole litters: nobody chose among them.': 'Alle kamen mit ihrem ganzen Wurf: Niemand hat unter ihnen ausgewählt.',
  '{litter} came with their whole litter. The other {chosen} were chosen by somebody. The two are counted together here, and may differ.':
    '{litter} kamen mit ihrem ganzen Wurf. Die anderen {chosen} hat jemand ausgewählt. Beide sind hier zusammen gezählt und können sich unterscheiden.',
  'too few dogs for an interval': 'zu wenige Hunde für einen Bereich',
  'birth year': 'Geburtsjahr',
  '{share}, may be {lower} to {upper}': '{share}, kann {lower} bis {upper} sein',
  'more in the set ({n}) than born ({born})': 'mehr in der Zusammenstellung ({n}) als geboren ({born})',
  '{count} of the years': '{count} der Jahre',
  'not known, as the births of {years} are not written down': 'nicht bekannt, denn die Geburten von {years} sind nicht aufgeschrieben',
  'Show what it would do': 'Zeigen, was es bewirken würde',
  'Breed and study': 'Rasse und Untersuchung',
  '{n} dogs, frozen {day}': '{n} Hunde, festgehalten am {day}',
  'Dogs to choose from': 'Rüden zur Auswahl',
  'Half of the set, until you write what is true: the set does not say who is dog and who is bitch.':
    'Die Hälfte der Zusammenstellung, bis Sie schreiben, was wahr ist: Sie sagt nicht, wer Rüde und wer Hündin ist.',
  'Of every 100 dogs, bred from': 'Von je 100 Rüden kommen in die Zucht',
  'of 100': 'von 100',
  'Bitches to choose from': 'Hündinnen zur Auswahl',
  'The other half.': 'Die andere Hälfte.',
  'Of every 100 bitches, bred from': 'Von je 100 Hündinnen kommen in die Zucht',
  'the frozen sets': 'die festgehaltenen Zusammenstellungen',
  'Reckoned from a frozen set: counts, no dogs. Nothing here is stored, and no dog is chosen by it.':
    'Berechnet aus einer festgehaltenen Zusammenstellung: Zahlen, keine Hunde. Nichts davon wird gespeichert, und kein Hund wird damit ausgewählt.',
  'The breed and the share': 'Die Rasse und der Anteil',
  'No set is frozen yet': 'Noch ist keine Zusammenstellung festgehalten',
  'As soon as at least five dogs of a breed have been read, the next freeze makes a set of it.':
    'Sobald mindestens fünf Hunde einer Rasse beurteilt sind, entsteht beim nächsten Festhalten eine Zusammenstellung.',
  'What is left to breed from': 'Was für die Zucht bleibt',
  '**{dogs, plural, one {# dog} other {# dogs}} and {bitches, plural, one {# bitch} other {# bitches}}**, of {allDogs} and {allBitches}. {otherDogs} and {otherBitches} would not be bred from.':
    '**{dogs, plural, one {# Rüde} other {# Rüden}} und {bitches, plural, one {# Hündin} other {# Hündinnen}}**, von {allDogs} und {allBitches}. {otherDogs} und {otherBitches} kämen nicht in die Zucht.',
  'If all of these were bred from alike and none were related, they would count as **{effective}** animals, and inbreeding would rise by **{share} of 100** in every generation. Relatives and favourite sires make it narrower, and every other thing that a breed is chosen for takes its own part.':
    'Kämen alle diese gleich oft in die Zucht und wären sie nicht verwandt, würden sie wie **{effective}** Tiere zählen, und die Inzucht würde in jeder Generation um **{share} von 100** steigen. Verwandte und beliebte Rüden machen es enger, und alles andere, worauf in einer Rasse geachtet wird, nimmt sich seinen eigenen Teil.',
  'Effective number 4·d·b/(d + b) and 1/(2·effective number): Wright, Genetics 1931;16:97-159.':
    'Effektive Zahl 4·d·b/(d + b) und 1/(2·effektive Zahl): Wright, Genetics 1931;16:97-159.',
  'A second X-ray would not choose the same animals: of every 100 chosen dogs about **{dogs}**, and of every 100 chosen bitches about **{bitches}**, would then lie outside the share.':
    'Ein zweites Röntgen würde nicht dieselben Tiere auswählen: Von je 100 ausgewählten Rüden lägen dann etwa **{dogs}** außerhalb des Anteils, und von je 100 ausgewählten Hündinnen etwa **{bitches}**.',
  'From the published repeatability. {source}.': 'Aus der veröffentlichten Wiederholbarkeit. {source}.',
  'What it would do': 'Was es bewirken würde',
  '{breed}, {age}, frozen {day}': '{breed}, {age}, festgehalten am {day}',
  'Only {n} dogs, fewer than 120: mean and spread may still change much.':
    'Nur {n} Hunde, weniger als 120: Mittel und Streuung können sich noch stark ändern.',
  'The mean {measure} of the next generation would lie somewhere between **{higher}** and **{lower}**. Now it is **{now}**. How much of it is inherited in your own population is not known: yours may lie outside all of these.':
    'Das Mittel der nächsten Generation ({measure}) läge irgendwo zwischen **{higher}** und **{lower}**. Jetzt ist es **{now}**. Wie viel davon in Ihrer eigenen Population vererbt wird, ist nicht bekannt: Ihres kann außerhalb von all dem liegen.',
  'From {n} dogs, with a spread (standard deviation) of {sd}.': 'Aus {n} Hunden, mit einer Streuung (Standardabweichung) von {sd}.',
  'Reckoned with the breeder’s equation for so many animals, each generation chosen alike, the inherited spread falling as it is used up. It leaves out everything else that is bred for, inbreeding, and films that are never sent, so it is the most that choosing by this value alone could do. A lower mean is a tighter breed; it does not say how many dogs will become lame.':
    'Berechnet mit der Züchtergleichung für so viele Tiere, jede Generation gleich ausgewählt, wobei die vererbte Streuung abnimmt, wie sie verbraucht wird. Außer Acht bleiben alles andere, worauf gezüchtet wird, die Inzucht, und Bilder, die nie eingeschickt werden; es ist also das meiste, was eine Auswahl nach diesem Wert allein bewirken könnte. Ein niedrigeres Mittel ist eine festere Rasse; es sagt nicht, wie viele Hunde lahm werden.',
  'Choosing by the grade of the extended view instead would move this value by only a part of that:':
    'Eine Auswahl nach dem Grad des gestreckten Bildes würde diesen Wert nur um einen Teil davon bewegen:',
  '**{share} of 100** in {population}': '**{share} von 100** in {population}',
  '{litter} of them came with their whole litter; of the others somebody chose which dog to X-ray.':
    '{litter} davon kamen mit ihrem ganzen Wurf; bei den anderen hat jemand ausgewählt, welcher Hund geröntgt wird.',
  '{unsent} more were X-rayed and their films never sent, so the breed may be looser than this set.':
    '{unsent} weitere wurden geröntgt, und ihre Bilder wurden nie eingeschickt; die Rasse kann also lockerer sein als diese Zusammenstellung.',
  'The reckoning ends at once: so small a share would take the mean below what there can be. Choose more.':
    'Die Berechnung endet sofort: Ein so kleiner Anteil würde das Mittel unter das bringen, was es geben kann. Wählen Sie mehr.',
  generations: 'Generationen',
  '{measure} now {mean}. {parts}.': '{measure}, jetzt {mean}. {parts}.',
  'With a heritability of {heritability, number}: {means}': 'Bei einer Erblichkeit von {heritability, number}: {means}',
  then: 'dann',
  'Mean {measure} of the generations to come': 'Mittel der kommenden Generationen: {measure}',
  'h² {heritability, number}': 'h² {heritability, number}',
  'Mean after each generation, by published heritability': 'Mittel nach jeder Generation, nach veröffentlichter Erblichkeit',
  'Measured in': 'Gemessen in',
  Heritability: 'Erblichkeit',
  'Generation {number}': 'Generation {number}',
  'ends before': 'endet davor',
} as const;

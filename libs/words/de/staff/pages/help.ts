/** What each step is for, who takes it, and what holds it. */
export const help = {
  Help: 'Hilfe',
  'On this page': 'Auf dieser Seite',
  'Studies and numbers': 'Untersuchungen und Zahlen',
  'The short tour for you': 'Der kurze Rundgang für Sie',
  'What holds it.': 'Was es aufhält.',
  'When it goes another way.': 'Wenn es anders kommt.',
  '{study}, version {version}': '{study}, Version {version}',
  'What is measured: {name}.': 'Was gemessen wird: {name}.',
  '{dog} A dog must be {youngest} old, some breeds older.': '{dog} Ein Hund muss {youngest} alt sein, manche Rassen älter.',
  'How far two readings differ.': 'Wie weit zwei Beurteilungen auseinanderliegen.',
  'In a breed’s figures.': 'In den Zahlen einer Rasse.',
  'A joint may have no value:': 'Ein Gelenk kann ohne Wert bleiben:',
  recommended: 'empfohlen',
  'Where this comes from': 'Woher das kommt',
  'Sedation and anaesthesia can harm or kill. What is given, how much, and whether at all is decided by the veterinarian in charge, by local law and the code of practice. This program does arithmetic for what the vet has entered; it proposes nothing.':
    'Sedierung und Narkose können schaden oder töten. Was gegeben wird, wie viel, und ob überhaupt, entscheiden die verantwortliche Tierärztin oder der verantwortliche Tierarzt, das örtliche Recht und die Berufsregeln. Dieses Programm rechnet mit dem, was tierärztlich eingetragen wurde; es schlägt nichts vor.',
  'X-rays harm. Nobody stands in the beam, hands stay out of it, and who was in the room is written down. Local law on radiation, and the person responsible for it at your practice, come first.':
    'Röntgenstrahlen schaden. Niemand steht im Strahl, die Hände bleiben draußen, und wer im Raum war, wird aufgeschrieben. Das örtliche Strahlenschutzrecht und wer dafür in Ihrer Praxis verantwortlich ist, gehen vor.',
  Booking: 'Buchung',
  'Front desk': 'Anmeldung',
  'Type the dog’s name or transponder, choose the studies and a time; each time has a room, a person who may take the views, a nurse and a vet.':
    'Tippen Sie Namen oder Transponder des Hundes, wählen Sie die Untersuchungen und eine Zeit; zu jeder Zeit gehören ein Raum, jemand, der die Aufnahmen machen darf, jemand aus der Pflege und eine Tierärztin oder ein Tierarzt.',
  'Ask the health questions as they stand; “don’t know” is an answer, and a vet judges it.':
    'Stellen Sie die Fragen zur Gesundheit so, wie sie dastehen; „weiß ich nicht“ ist eine Antwort und wird tierärztlich beurteilt.',
  'Read the estimate out. The owner may also answer, agree and sign on their own page.':
    'Lesen Sie den Kostenvoranschlag vor. Die Besitzerin oder der Besitzer kann auch auf der eigenen Seite antworten, zustimmen und unterschreiben.',
  'Too young on that day, a study repeated too soon, nobody accredited, a device whose check has run out: the form says which, and from which day it is possible.':
    'An dem Tag zu jung, eine Untersuchung zu früh wiederholt, niemand zugelassen, ein Gerät mit abgelaufener Prüfung: Das Formular sagt, was es ist, und ab welchem Tag es geht.',
  'Another time keeps answers, advice and signatures. A cancelled time is offered to the waiting list in order. A dog that does not come is written down as such, without blame.':
    'Bei einer anderen Zeit bleiben Antworten, Hinweise und Unterschriften bestehen. Eine abgesagte Zeit wird der Warteliste der Reihe nach angeboten. Kommt ein Hund nicht, wird das aufgeschrieben, ohne Vorwurf.',
  Consent: 'Einwilligung',
  'Owner, or somebody with a signed authority': 'Besitzerin oder Besitzer, oder jemand mit unterschriebener Vollmacht',
  'Four questions of their own: the study, sending all films, the sedation, the use in statistics. Each may be answered with no.':
    'Vier eigene Fragen: die Untersuchung, das Einschicken aller Bilder, die Sedierung, die Verwendung in der Statistik. Auf jede kann man mit Nein antworten.',
  'Signed by link, on the tablet or on paper that is scanned.': 'Unterschrieben über den Link, auf dem Tablet oder auf Papier, das eingelesen wird.',
  'Nothing is done without the yes that it needs. A yes may be taken back until it has been acted on.':
    'Nichts geschieht ohne das Ja, das es braucht. Ein Ja lässt sich zurücknehmen, bis danach gehandelt wurde.',
  'The dog was sold: the new owner is asked anew. Somebody without authority is refused.':
    'Der Hund wurde verkauft: Die neue Besitzerin oder der neue Besitzer wird neu gefragt. Wer keine Vollmacht hat, wird abgelehnt.',
  Arriving: 'Ankunft',
  'Nurse and vet': 'Pflege, Tierärztin oder Tierarzt',
  'Weigh the dog, scan the transponder, ask the questions again.':
    'Wiegen Sie den Hund, lesen Sie den Transponder ab, stellen Sie die Fragen noch einmal.',
  'The vet examines and signs a plan for today’s weight.':
    'Die Tierärztin oder der Tierarzt untersucht und unterschreibt einen Plan für das Gewicht von heute.',
  'Another transponder than the order’s, a weight that jumped, a plan signed by a vet who is not here, a class that the vet has to judge.':
    'Ein anderer Transponder als im Auftrag, ein Gewichtssprung, ein Plan von jemandem, der nicht da ist, eine Einstufung, die tierärztlich zu beurteilen ist.',
  'A dog that is not well is turned away, and the visit is free for another.':
    'Ein Hund, dem es nicht gut geht, wird nach Hause geschickt, und der Termin ist für einen anderen frei.',
  'Write down a reading every five minutes until the recovery signs are signed. The page “Beside the dog” is made for a tablet and works without network.':
    'Schreiben Sie alle fünf Minuten eine Messung auf, bis die Aufwachzeichen unterschrieben sind. Die Seite „Beim Hund“ ist für ein Tablet gemacht und geht auch ohne Netz.',
  'More sedation is a new plan that a vet signs.': 'Mehr Sedierung ist ein neuer Plan, den eine Tierärztin oder ein Tierarzt unterschreibt.',
  'A reading that is due is said, without a sound and without a countdown.': 'Eine fällige Messung wird gesagt, ohne Ton und ohne Countdown.',
  'Anybody may press Stop imaging, at any time, without a reason. Missing views are sorted out later.':
    'Jede und jeder darf „Aufnahmen beenden“ drücken, jederzeit und ohne Grund. Fehlende Aufnahmen werden später geklärt.',
  'Taking the films': 'Die Bilder machen',
  'Radiographer or vet': 'Röntgen, Tierärztin oder Tierarzt',
  'Scan the dog at the table, take each view, look at it before the dog wakes: accept it, or take it again with a reason.':
    'Lesen Sie am Tisch den Transponder ab, machen Sie jede Aufnahme und sehen Sie sie an, bevor der Hund aufwacht: annehmen, oder mit einem Grund wiederholen.',
  'Points set on a film show whether the pelvis is turned and how sure a room estimate is. The estimate stays in the room; the reader decides.':
    'Punkte, die auf ein Bild gesetzt werden, zeigen, ob das Becken verdreht ist und wie sicher eine Schätzung im Raum ist. Die Schätzung bleibt im Raum; entschieden wird bei der Auswertung.',
  'A film that names another dog or another day, a film that belongs to no study, nobody written down as in the room.':
    'Ein Bild, das einen anderen Hund oder einen anderen Tag nennt, ein Bild, das zu keiner Untersuchung gehört, niemand als im Raum aufgeschrieben.',
  'Every film goes to the reader, also one that was taken again. A film of another dog is taken out, with the reason kept.':
    'Jedes Bild geht an die Auswertung, auch ein wiederholtes. Das Bild eines anderen Hundes wird herausgenommen, und der Grund bleibt stehen.',
  'Waking and going home': 'Aufwachen und nach Hause gehen',
  'Sign the recovery signs that are seen now.': 'Unterschreiben Sie die Aufwachzeichen, die jetzt zu sehen sind.',
  'Print the going-home sheet and explain it to whoever collects the dog.':
    'Drucken Sie das Blatt für zu Hause und erklären Sie es der Person, die den Hund abholt.',
  'Nobody goes home before the signs are signed and the sheet is given.':
    'Kein Hund geht nach Hause, bevor die Zeichen unterschrieben sind und das Blatt übergeben ist.',
  'Death or harm is one action: mails stop, the record is frozen, and one named person speaks with the family.':
    'Tod oder Schaden ist ein einziger Schritt: Mails halten an, die Akte wird eingefroren, und eine genannte Person spricht mit der Familie.',
  'Seal the package: what is in it is fixed from then on. Send it.':
    'Versiegeln Sie die Sendung: Was darin ist, steht von da an fest. Schicken Sie sie ab.',
  'The program asks after receipt and after the result, on the centre’s working days, and says when a person has to ask.':
    'Das Programm fragt nach dem Eingang und nach dem Ergebnis, an den Arbeitstagen der Auswertungsstelle, und sagt, wann ein Mensch nachfragen muss.',
  'The owner’s yes to sending is missing, a view is missing without a reason.': 'Das Ja zum Einschicken fehlt, oder eine Aufnahme fehlt ohne Grund.',
  'The centre is closed, unpaid or its address bounces: the cause is named, and who can lift it. Films that come back are rebooked or settled by the vet.':
    'Die Auswertungsstelle ist geschlossen, unbezahlt oder ihre Adresse nimmt nichts an: Die Ursache wird genannt, und wer sie beheben kann. Für zurückgeschickte Bilder gibt es einen neuen Termin, oder es wird tierärztlich entschieden.',
  'The reading': 'Die Beurteilung',
  'Reader at a grading centre': 'Auswertende Person an einer Auswertungsstelle',
  'Read blind: no owner, no practice, no estimate from the room, no earlier reading.':
    'Blind beurteilen: kein Besitz, keine Praxis, keine Schätzung aus dem Raum, keine frühere Beurteilung.',
  'Give each joint a value, or a reason why there is none; sign.':
    'Geben Sie jedem Gelenk einen Wert oder einen Grund, warum es keinen gibt; unterschreiben Sie.',
  'A value outside the scale is refused; an unusual one is asked about.':
    'Ein Wert außerhalb der Skala wird abgelehnt; bei einem ungewöhnlichen wird nachgefragt.',
  'Films that cannot be read are sent back with the view and the reason. An appeal is read by somebody else, and the rule which one stands is fixed before.':
    'Bilder, die sich nicht beurteilen lassen, gehen mit der Aufnahme und dem Grund zurück. Eine zweite Beurteilung macht jemand anders, und welche gilt, steht vorher fest.',
  'The letter': 'Der Brief',
  Vet: 'Tierärztin oder Tierarzt',
  'Check the reading beside the films, accept it, release the letter, or phone first.':
    'Prüfen Sie die Beurteilung neben den Bildern, nehmen Sie sie an, geben Sie den Brief frei, oder rufen Sie vorher an.',
  'Two readings that disagree, sides that look exchanged, a number that came by post and was keyed only once.':
    'Zwei Beurteilungen, die sich widersprechen, Seiten, die vertauscht aussehen, eine Zahl, die mit der Post kam und nur einmal eingetippt wurde.',
  'A reading of the wrong dog is withdrawn: each owner gets a correction that names nobody else, and the certificate’s page says so.':
    'Die Beurteilung eines falschen Hundes wird zurückgezogen: Jede Besitzerin und jeder Besitzer bekommt eine Berichtigung, die niemand anderen nennt, und die Seite des Papiers sagt es.',
} as const;

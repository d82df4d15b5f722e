/** What owners are written by mail. */
export const mails = {
  'Dear {name},': 'Guten Tag {name},',
  'Questions? Call {practice}: {phone}.': 'Haben Sie Fragen? Rufen Sie an: {practice}, {phone}.',
  'Your page for {dog}: {link}': 'Ihre Seite für {dog}: {link}',
  '{dog} at {practice}': '{dog}: {practice}',

  '{dog}: visit on {day}, {start}': '{dog}: Termin am {day}, {start} Uhr',
  '{dog} is booked on {day} at {start} at {practice}, {address}. Pictures: {pictures}.':
    '{dog} hat einen Termin am {day}, um {start} Uhr. Ort: {practice}, {address}. Bilder: {pictures}.',
  'This is a new time. What you have already answered and signed stays as it is.':
    'Das ist ein neuer Termin. Was Sie schon beantwortet und unterschrieben haben, bleibt bestehen.',
  'Before the visit (chosen by {vet}, veterinarian):': 'Vor dem Termin (tierärztlich ausgewählt von {vet}):',
  'Before the visit (chosen by {vet}, veterinarian), the same for each dog:': 'Vor dem Termin (tierärztlich ausgewählt von {vet}), für jeden Hund gleich:',
  'Please answer a few questions, look at the estimate and sign on your page before the visit. You can say no to each part, and take a yes back.':
    'Bitte beantworten Sie vor dem Termin auf Ihrer Seite einige Fragen, sehen Sie sich den Kostenvoranschlag an und unterschreiben Sie. Sie können zu jedem Teil Nein sagen und ein Ja zurücknehmen.',
  'Please answer a few questions, look at the estimate and sign on the page of each dog before the visit. You can say no to each part, and take a yes back.':
    'Bitte beantworten Sie vor dem Termin auf der Seite jedes Hundes einige Fragen, sehen Sie sich den Kostenvoranschlag an und unterschreiben Sie. Sie können zu jedem Teil Nein sagen und ein Ja zurücknehmen.',
  'The calendar file is attached.': 'Die Kalenderdatei ist angehängt.',

  '{count} dogs: visit on {day}': '{count, plural, one {# Hund} other {# Hunde}}: Termin am {day}',
  'For {day} at {practice}, {address}. Pictures: {pictures}. The dogs follow one another:':
    'Für {day}. Ort: {practice}, {address}. Bilder: {pictures}. Die Hunde kommen nacheinander an die Reihe:',
  '{number}. {dog}, {start}: booked. Page: {link}': '{number}. {dog}, {start} Uhr: gebucht. Seite: {link}',
  '{number}. {dog}: not booked. {problem}': '{number}. {dog}: nicht gebucht. {problem}',
  'Too young on that day. Old enough from {day}.': 'An diesem Tag zu jung. Alt genug ab {day}.',
  'Please call us; we tell you why.': 'Bitte rufen Sie uns an; wir sagen Ihnen den Grund.',
  'The times of the others do not depend on a dog that is not booked. We will gladly find another day for it.':
    'Die Zeiten der anderen hängen nicht von einem Hund ab, der nicht gebucht ist. Gern finden wir für ihn einen anderen Tag.',

  '{dog}: your visit on {day}': '{dog}: Ihr Termin am {day}',
  '{dog} comes on {day} at {start}. Has anything changed? Each question on the page is one tap; “don’t know” is an answer.':
    '{dog} kommt am {day}, um {start} Uhr. Hat sich etwas geändert? Jede Frage auf der Seite beantworten Sie mit einem Tippen; auch „weiß ich nicht“ ist eine Antwort.',

  '{dog}: an earlier time, {day}, {start}': '{dog}: ein früherer Termin, {day}, {start} Uhr',
  'A time has become free for {dog}: {day} at {start}, instead of {now}. Would it suit you?':
    'Für {dog} ist ein Termin frei geworden: {day}, um {start} Uhr, statt {now} Uhr. Passt er Ihnen?',
  'A time has become free for {dog}: {day} at {start}. Would it suit you?': 'Für {dog} ist ein Termin frei geworden: {day}, um {start} Uhr. Passt er Ihnen?',
  'Say yes or no on your page until {until}. After that it goes to the next who waits, and your visit stays as it is. Nothing changes for {dog} before you have said yes and had our confirmation.':
    'Sagen Sie auf Ihrer Seite Ja oder Nein, bis {until} Uhr. Danach geht er an die Nächsten, die warten, und Ihr Termin bleibt, wie er ist. Für {dog} ändert sich nichts, bevor Sie Ja gesagt und unsere Bestätigung erhalten haben.',
  'Say yes or no on your page until {until}. After that it goes to the next who waits, and you stay on the list. Nothing changes for {dog} before you have said yes and had our confirmation.':
    'Sagen Sie auf Ihrer Seite Ja oder Nein, bis {until} Uhr. Danach geht er an die Nächsten, die warten, und Sie bleiben auf der Liste. Für {dog} ändert sich nichts, bevor Sie Ja gesagt und unsere Bestätigung erhalten haben.',

  '{dog}: statement of charges': '{dog}: Aufstellung der Kosten',
  'For {dog}, order {order}, {practice} has charged:': 'Für {dog}, Auftrag {order}, hat {practice} berechnet:',
  'We have written down:': 'Wir haben notiert:',
  'Accepted with the estimate: {money}.': 'Mit dem Kostenvoranschlag angenommen: {money}.',
  'Charged: {money}.': 'Berechnet: {money}.',
  'Of that, {money} is more than was agreed to. Please call us about it.': 'Davon sind {money} mehr, als vereinbart war. Bitte rufen Sie uns deswegen an.',
  'Paid: {money}.': 'Bezahlt: {money}.',
  'Nothing is charged yet.': 'Es ist noch nichts berechnet.',
  '{money} was paid beforehand; nothing is charged yet.': '{money} wurden im Voraus bezahlt; es ist noch nichts berechnet.',
  '{money} is open.': '{money} sind offen.',
  '{money} more was paid than charged. We will be in touch.': 'Es wurden {money} mehr bezahlt als berechnet. Wir melden uns bei Ihnen.',
  'All that was charged is paid.': 'Alles, was berechnet wurde, ist bezahlt.',
  '{words}, receipt {receipt}: {money}': '{words}, Beleg {receipt}: {money}',

  '{dog} was expected on {day} at {start}, and we did not see you. We hope that all is well. Call us, and we find another day; the questions and signatures are asked again for it, because they are for one day.':
    'Wir haben {dog} am {day}, um {start} Uhr erwartet und Sie nicht gesehen. Wir hoffen, dass alles in Ordnung ist. Rufen Sie uns an, dann finden wir einen anderen Tag. Fragen und Unterschriften werden dafür noch einmal erbeten, weil sie für einen Tag gelten.',
  '{dog}: visit on {day} cancelled': '{dog}: Termin am {day} abgesagt',
  'The visit on {day} at {start} is cancelled. {why}': 'Der Termin am {day}, um {start} Uhr ist abgesagt. {why}',
  '{dog}: your page': '{dog}: Ihre Seite',
  'Here is a new link to your page. It shows where everything stands, and what we still need from you. Earlier links no longer work.':
    'Hier ist ein neuer Link zu Ihrer Seite. Sie zeigt, wie alles steht und was wir noch von Ihnen brauchen. Frühere Links gelten nicht mehr.',

  '{dog} goes home: please read': '{dog} geht nach Hause: bitte lesen',
  'The sheet for tonight is attached: what is to be expected, and when to call at once.':
    'Das Blatt für heute Nacht ist angehängt: was zu erwarten ist, und wann Sie sofort anrufen.',
  'Not all pictures were taken: {dog} woke, and we stopped. Missing: {missing}.': 'Es wurden nicht alle Bilder gemacht: {dog} ist aufgewacht, und wir haben aufgehört. Es fehlen: {missing}.',
  'Not all pictures were taken: {dog} was left to wake before the end. Missing: {missing}.':
    'Es wurden nicht alle Bilder gemacht: Wir haben {dog} vor dem Ende aufwachen lassen. Es fehlen: {missing}.',
  'We will call you. You can choose another day, for which we ask for your consent again and weigh and examine the dog again, or have the pictures read as they are.':
    'Wir rufen Sie an. Sie können einen anderen Tag wählen; dafür bitten wir Sie erneut um Ihre Einwilligung und wiegen und untersuchen den Hund noch einmal. Oder Sie lassen die Bilder so beurteilen, wie sie sind.',
  'The number that answers now: {phone}.': 'Unter dieser Nummer erreichen Sie jetzt jemanden: {phone}.',

  '{dog}: a letter from {practice}': '{dog}: ein Brief von {practice}',
  '{dog}: a letter from the practice': '{dog}: ein Brief von der Praxis',
  'A letter about the pictures is attached. It says what was read, how sure that is, and what it cannot tell. Please read it in quiet, and call us with any question.':
    'Ein Brief zu den Bildern ist angehängt. Er sagt, was beurteilt wurde, wie sicher das ist und was es nicht sagen kann. Bitte lesen Sie ihn in Ruhe, und rufen Sie uns bei jeder Frage an.',
  '{dog}: a correction': '{dog}: eine Berichtigung',
  'An earlier letter was not right. The attached letter says what holds now. We are sorry for the trouble.':
    'Ein früherer Brief war nicht richtig. Der angehängte Brief sagt, was jetzt gilt. Es tut uns leid, dass Sie Mühe damit haben.',
  '{dog}: some pictures again': '{dog}: einige Bilder noch einmal',
  'Some pictures could not be read by the centre. The attached letter says which, and what comes next. It is nobody’s fault.':
    'Einige Bilder konnte die Auswertungsstelle nicht beurteilen. Der angehängte Brief sagt, welche es sind und wie es weitergeht. Niemand ist daran schuld.',

  '{dog}: a new owner': '{dog}: neuer Besitz',
  'We have written down that {dog} has a new owner since {day}. May the new owner see what comes of the pictures? Please say so on your page. Nothing about you is shown to them.':
    'Wir haben notiert, dass {dog} seit {day} jemand anderem gehört. Darf diese Person sehen, was die Bilder ergeben? Bitte sagen Sie es auf Ihrer Seite. Über Sie wird ihr nichts gezeigt.',
  'You are {dog}’s owner since {day}. Pictures were asked for before that. If you and the earlier owner both agree, you see what comes of them. Please say so on your page.':
    '{dog} gehört seit {day} Ihnen. Schon davor wurden Bilder in Auftrag gegeben. Wenn Sie und die Person, der {dog} vorher gehörte, beide zustimmen, sehen Sie, was sie ergeben. Bitte sagen Sie es auf Ihrer Seite.',
  '{dog}: {practice} looks after you now': '{dog}: {practice} ist jetzt für Sie da',
  'As agreed with you, {practice} has taken over everything about {dog} from us. Your page shows how to reach them.':
    'Wie mit Ihnen vereinbart, hat {practice} von uns alles übernommen, was {dog} betrifft. Ihre Seite zeigt, wie Sie die Praxis erreichen.',
  'The visit with us on {day} is cancelled; they find a new day with you.': 'Der Termin bei uns am {day} ist abgesagt; die neue Praxis findet mit Ihnen einen anderen Tag.',
  '{dog}: the reading centre has closed': '{dog}: Die Auswertungsstelle hat geschlossen',
  '{centre}, which was to read {dog}’s pictures, has closed. No picture is lost. We will ask you which centre may read them instead.':
    '{centre} sollte die Bilder von {dog} beurteilen und hat geschlossen. Kein Bild ist verloren. Wir fragen Sie, welche Stelle die Bilder stattdessen beurteilen darf.',
  'The reading centre': 'Die Auswertungsstelle',
} as const;

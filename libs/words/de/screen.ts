/** What stands on the pages of owners themselves. It is the only part that a browser loads. */
export const screen = {
  'Language of this page': 'Sprache dieser Seite',
  'Go to the page': 'Zum Inhalt',
  'Fetching your dog’s page …': 'Die Seite Ihres Hundes wird geholt …',
  'Press the link in the newest mail from the practice, or ask them on the phone to send a new one.':
    'Drücken Sie auf den Link in der neuesten Mail der Praxis, oder bitten Sie dort am Telefon um einen neuen.',
  'What we ask of you': 'Worum wir Sie bitten',
  'What happens next': 'Wie es weitergeht',
  'Talk to us': 'Sprechen Sie mit uns',
  '{practice}, {phone}. Are you worried about {dog}? Phone us; if we are closed, phone the vet on call. Do not wait for a mail.':
    '{practice}, {phone}. Machen Sie sich Sorgen um {dog}? Rufen Sie uns an; ist bei uns geschlossen, rufen Sie den tierärztlichen Notdienst an. Warten Sie nicht auf eine Mail.',
  'no transponder': 'kein Transponder',
  'Order {order}.': 'Auftrag {order}.',
  'This text of the practice is written in {language}.': 'Dieser Text der Praxis ist auf {language} geschrieben.',
  English: 'Englisch',
  Deutsch: 'Deutsch',

  'Before you come': 'Bevor Sie kommen',
  'Approved by {name}, vet. If the vet told you something else, do what the vet said.':
    'Tierärztlich freigegeben von {name}. Hat man Ihnen in der Praxis etwas anderes gesagt, tun Sie, was dort gesagt wurde.',

  'Read and decide': 'Lesen und entscheiden',
  'Each of these is a question of its own. You may say yes to one and no to another. Ask us before you sign; nobody is cross about a no.':
    'Jedes davon ist eine eigene Frage. Sie dürfen zu einem Ja und zu einem anderen Nein sagen. Fragen Sie uns, bevor Sie unterschreiben; über ein Nein ärgert sich niemand.',
  'Your answer: {question}': 'Ihre Antwort: {question}',
  'You sign as owner: {name}.': 'Sie unterschreiben als Besitzerin oder Besitzer: {name}.',
  'You sign as agent of the owner: {name}.': 'Sie unterschreiben in Vertretung: {name}.',
  '**Not signed yet.** {problem}': '**Noch nicht unterschrieben.** {problem}',
  'The marked places above say what is missing.': 'Die markierten Stellen oben sagen, was fehlt.',
  'Sign my answers': 'Meine Antworten unterschreiben',
  'Nothing is decided yet. Say yes or no to at least one of them; what you leave open stays open.':
    'Noch ist nichts entschieden. Sagen Sie mindestens zu einem davon Ja oder Nein; was Sie offen lassen, bleibt offen.',
  'Your signature is missing. Draw it, or write your name.': 'Ihre Unterschrift fehlt. Zeichnen Sie sie, oder schreiben Sie Ihren Namen.',
  'Say yes or no, so that nobody has to guess.': 'Sagen Sie Ja oder Nein, damit niemand raten muss.',
  'Write an amount like 500 or 500.00, without signs between the thousands.': 'Schreiben Sie einen Betrag wie 500 oder 500,00, ohne Zeichen zwischen den Tausendern.',
  'A number is needed that is answered on that day.': 'Es wird eine Nummer gebraucht, unter der an dem Tag jemand erreichbar ist.',
  'Name at least one person.': 'Nennen Sie mindestens eine Person.',
  'At most five people, one on each line.': 'Höchstens fünf Personen, eine in jeder Zeile.',
  Yes: 'Ja',
  No: 'Nein',
  'Don’t know': 'Weiß ich nicht',
  '{study}, read by {centre}': '{study}, beurteilt von {centre}',
  'Every film taken is sent': 'Jedes gemachte Bild wird eingeschickt',
  'Counting in the picture of the breed': 'Mitzählen im Bild der Rasse',
  'Version of this text: {version}': 'Fassung dieses Textes: {version}',
  'You can take this yes back at any time. Once your dog is asleep, the sleep itself cannot be taken back: no more pictures are taken, and your dog is watched until awake.':
    'Dieses Ja können Sie jederzeit zurücknehmen. Schläft Ihr Hund einmal, lässt sich der Schlaf selbst nicht zurücknehmen: Dann werden keine Bilder mehr gemacht, und Ihr Hund wird überwacht, bis er wach ist.',
  'You can take this yes back at any time. Pictures that have been taken and films that have been sent cannot be undone; a letter you have received stays with you.':
    'Dieses Ja können Sie jederzeit zurücknehmen. Bilder, die gemacht oder eingeschickt sind, lassen sich nicht ungeschehen machen; ein Brief, den Sie bekommen haben, bleibt bei Ihnen.',
  'You can take this yes back until the films are packed for the reader. Films that have been sent cannot be called back.':
    'Dieses Ja können Sie zurücknehmen, bis die Bilder für die Auswertung gepackt sind. Eingeschickte Bilder lassen sich nicht zurückholen.',
  'You can take this yes back at any time. A picture of the breed that was already counted and dated keeps the value, without your name; later ones leave it out.':
    'Dieses Ja können Sie jederzeit zurücknehmen. Ein Bild der Rasse, das schon gezählt und datiert ist, behält den Wert, ohne Ihren Namen; spätere lassen ihn weg.',

  'Signature: draw it, or write the name': 'Unterschrift: zeichnen, oder den Namen schreiben',
  'A signature has been drawn': 'Eine Unterschrift ist gezeichnet',
  'Field to draw a signature in; the name may be written below instead': 'Feld, um eine Unterschrift zu zeichnen; stattdessen kann darunter der Name stehen',
  'Draw again': 'Noch einmal zeichnen',
  'Name of the person who signs': 'Name der Person, die unterschreibt',

  'If something goes wrong on the day': 'Wenn an dem Tag etwas schiefgeht',
  'This is rare. The vet always tries to reach you first, and decides with you when there is time.':
    'Das ist selten. Die Praxis versucht immer zuerst, Sie zu erreichen, und entscheidet mit Ihnen, wenn Zeit dafür ist.',
  'If {dog}’s heart or breathing stops: shall they try to bring {dog} back?': 'Wenn Herz oder Atmung von {dog} stehen bleiben: Soll versucht werden, {dog} wiederzubeleben?',
  'Up to how much may help cost before anyone has reached you, in {currency}?': 'Bis zu welchem Betrag darf Hilfe kosten, bevor jemand Sie erreicht hat, in {currency}?',
  'A number where you answer on that day': 'Eine Nummer, unter der Sie an dem Tag erreichbar sind',
  'Who may fetch the dog': 'Wer den Hund abholen darf',
  'One name on each line.': 'In jeder Zeile ein Name.',

  'What you decided': 'Was Sie entschieden haben',
  'Signed. Your decisions have reached the practice; you can change them here.': 'Unterschrieben. Ihre Entscheidungen sind in der Praxis angekommen; Sie können sie hier ändern.',
  'you said yes': 'Sie haben Ja gesagt',
  'you said no': 'Sie haben Nein gesagt',
  'you took your yes back': 'Sie haben Ihr Ja zurückgenommen',
  'Take back my yes': 'Mein Ja zurücknehmen',
  'Decide again': 'Noch einmal entscheiden',
  'Take back your yes': 'Ihr Ja zurücknehmen',
  '**{purpose}.** The practice sees it at once. You need not say why.': '**{purpose}.** Die Praxis sieht es sofort. Sie müssen nicht sagen, warum.',
  'Why, if you like to say': 'Warum, wenn Sie es sagen möchten',
  'Take it back': 'Zurücknehmen',

  'What it costs': 'Was es kostet',
  'Estimate in {currency}': 'Kostenvoranschlag in {currency}',
  Together: 'Zusammen',
  'You said yes to this estimate.': 'Sie haben zu diesem Kostenvoranschlag Ja gesagt.',
  'If something else turns out to be needed, we ask you first. Is it too much, or not clear? Phone us on {phone}.':
    'Stellt sich heraus, dass etwas anderes nötig ist, fragen wir Sie vorher. Ist es zu viel, oder nicht klar? Rufen Sie uns an: {phone}.',
  'I accept {money}': 'Ich nehme {money} an',

  'When letters come': 'Wann Briefe kommen',
  'Letters about pictures come {when}, so that you reach somebody of {practice} with your questions.':
    'Briefe zu Bildern kommen {when}, damit Sie mit Ihren Fragen jemanden erreichen: {practice}.',
  'That is good': 'Das ist gut so',
  'Send them at once, at any time': 'Sofort schicken, zu jeder Zeit',

  'The visit has been moved. A confirmation is on its way.': 'Der Termin ist verlegt. Eine Bestätigung ist unterwegs.',
  'Your visit stays as it is.': 'Ihr Termin bleibt, wie er ist.',
  'An earlier time for {dog}?': 'Ein früherer Termin für {dog}?',
  '**{day} at {start}**. Please answer until {until}; after that it goes to somebody else, and your visit stays as it is.':
    '**{day}, um {start} Uhr**. Bitte antworten Sie bis {until} Uhr; danach geht er an jemand anderen, und Ihr Termin bleibt, wie er ist.',
  '**{day} at {start}**, instead of {now} at {nowStart}. Please answer until {until}; after that it goes to somebody else, and your visit stays as it is.':
    '**{day}, um {start} Uhr**, statt {now}, {nowStart} Uhr. Bitte antworten Sie bis {until} Uhr; danach geht er an jemand anderen, und Ihr Termin bleibt, wie er ist.',
  'Yes, move the visit': 'Ja, den Termin verlegen',
  'No, keep it as it is': 'Nein, alles so lassen',

  'Your dog’s page': 'Die Seite Ihres Hundes',
  'Here you see how far your dog’s examination is, answer questions and give or take back your yes.':
    'Hier sehen Sie, wie weit die Untersuchung Ihres Hundes ist, beantworten Fragen und geben Ihr Ja oder nehmen es zurück.',
  'Open my dog’s page': 'Die Seite meines Hundes öffnen',
  'Pictures to read': 'Bilder zur Auswertung',
  'Here you look at the pictures of one package and enter your reading. You read blind: no owner, no practice.':
    'Hier sehen Sie die Bilder eines Pakets an und tragen Ihre Beurteilung ein. Sie beurteilen blind: ohne Besitz, ohne Praxis.',
  'Open the package': 'Das Paket öffnen',
  'This link is not whole. Press it in the mail once more, or copy all of it. If that does not help, ask the practice for a new one.':
    'Dieser Link ist nicht vollständig. Drücken Sie in der Mail noch einmal darauf, oder kopieren Sie ihn ganz. Hilft das nicht, bitten Sie die Praxis um einen neuen.',
  'The link is yours alone. Please do not pass it on; whoever has it can answer in your name.':
    'Der Link gehört Ihnen allein. Bitte geben Sie ihn nicht weiter; wer ihn hat, kann in Ihrem Namen antworten.',

  'Your papers': 'Ihre Papiere',
  'Which, and since when?': 'Welche, und seit wann?',
  'What have you seen, and when?': 'Was haben Sie gesehen, und wann?',
  'Which operation, and when?': 'Welche Operation, und wann?',
  'Since when, or when is it due?': 'Seit wann, oder wann ist es so weit?',
  'Since when?': 'Seit wann?',
  'Still open: {questions} “Don’t know” is an answer too.': 'Noch offen: {questions} Auch „Weiß ich nicht“ ist eine Antwort.',
  'Nothing is changed. Your answers are already with the practice.': 'Es ist nichts geändert. Ihre Antworten sind schon in der Praxis.',
  'Questions about {his} health': 'Fragen zur Gesundheit von {name}',
  'That is fine. The vet will ask you.': 'Das ist in Ordnung. In der Praxis werden Sie gefragt.',
  'If you like. A few words are enough.': 'Wenn Sie möchten. Ein paar Worte genügen.',
  'Your answers have reached the practice. You can change them until the visit begins.': 'Ihre Antworten sind in der Praxis angekommen. Sie können sie ändern, bis der Termin beginnt.',
  'Send my answers': 'Meine Antworten senden',

  'X-rayed, not sent': 'geröntgt, nicht eingeschickt',
  'Among other dogs of the breed': 'Neben anderen Hunden der Rasse',
  'What was found': 'Was gefunden wurde',
  male: 'Rüde',
  female: 'Hündin',
  'transponder {number}': 'Transponder {number}',
  'Read on {day}': 'Beurteilt am {day}',
  'For {dog} as a whole: **{result}**': 'Für {dog} insgesamt: **{result}**',
  '**It does not tell** whether {he} will have pain, be lame or get arthritis later, nor what {his} pups will have. A second look might come out a little different; the letter says by how much. Is {name} stiff, lame or in pain? See your vet, whatever the pictures say.':
    '**Es sagt nicht**, ob {name} Schmerzen haben, lahmen oder später Arthrose bekommen wird, und nicht, was die Welpen von {name} haben werden. Eine zweite Untersuchung könnte ein wenig anders ausfallen; der Brief sagt, um wie viel. Ist {name} steif, lahm oder hat Schmerzen? Gehen Sie in Ihre Praxis, was auch immer die Bilder sagen.',

  'Here, weighed, examined': 'Hier, gewogen, untersucht',
  Asleep: 'Im Schlaf',
  'Pictures taken': 'Bilder gemacht',
  'Awake again': 'Wieder wach',
  Home: 'Zu Hause',
  done: 'geschehen',
  now: 'jetzt',
  'to come': 'kommt noch',
  'How far {his} visit is': 'Wie weit der Termin von {name} ist',
  Booked: 'Gebucht',
  'for {day}, {start}': 'für {day}, {start} Uhr',
  '**Your answers.** {count, plural, one {One thing is} other {# things are}} asked of you, below.':
    '**Ihre Antworten.** Weiter unten {count, plural, one {bitten wir Sie um eines} other {bitten wir Sie um # Dinge}}.',

  'I would like a second reading': 'Ich möchte eine zweite Beurteilung',
  '**Another reader sees the same pictures, and not the first reading.** What that reader finds then stands, whichever way it goes, better or not. This can be asked for once, until {day}. It takes about as long as the first reading.':
    '**Eine andere Fachperson sieht dieselben Bilder, und nicht die erste Beurteilung.** Was sie findet, gilt dann, wie auch immer es ausfällt, besser oder nicht. Darum können Sie einmal bitten, bis zum {day}. Es dauert ungefähr so lange wie die erste Beurteilung.',
  'Would you rather talk about it first? Phone us on {phone}.': 'Möchten Sie lieber erst darüber sprechen? Rufen Sie uns an: {phone}.',
  'Ask for the second reading': 'Um die zweite Beurteilung bitten',
  'Not now': 'Jetzt nicht',

  '{dog} has a new owner': '{dog} gehört jemand anderem',
  'The practice has written down that {dog} has a new owner since {day}. May they see what comes of the pictures? They see nothing of you: not your name, your answers or what you signed.':
    'Die Praxis hat notiert, dass {dog} seit dem {day} jemand anderem gehört. Darf diese Person sehen, was die Bilder ergeben? Von Ihnen sieht sie nichts: nicht Ihren Namen, nicht Ihre Antworten und nicht, was Sie unterschrieben haben.',
  'You are {dog}’s owner since {day}. If you and the earlier owner both agree, what comes of the pictures is shown here. Nothing from before that day is.':
    '{dog} gehört seit dem {day} Ihnen. Wenn Sie und die Person, der {dog} vorher gehörte, beide zustimmen, wird hier gezeigt, was die Bilder ergeben. Aus der Zeit vor diesem Tag wird nichts gezeigt.',
  '**You have said yes.** We wait for the other side. You need do nothing more.': '**Sie haben Ja gesagt.** Wir warten auf die andere Seite. Sie müssen nichts mehr tun.',
  'Sending …': 'Wird gesendet …',
  'Yes, they may see it': 'Ja, sie darf es sehen',
  'Yes, I want to see it': 'Ja, ich möchte es sehen',
  'Not saying yes is an answer too. Phone the practice if anything here is not right.': 'Kein Ja ist auch eine Antwort. Rufen Sie die Praxis an, wenn hier etwas nicht stimmt.',

  'Please sign in.': 'Bitte melden Sie sich an.',
  'Something in the form is missing or not right. The marked fields say what to change.': 'Im Formular fehlt etwas oder stimmt nicht. Die markierten Felder sagen, was zu ändern ist.',
  'This link is not valid or has run out. Ask the practice to send a new one.': 'Dieser Link gilt nicht oder ist abgelaufen. Bitten Sie die Praxis um einen neuen.',
  'The page is too old to send this. Reload it and try again; nothing was changed.': 'Die Seite ist zu alt, um das zu senden. Laden Sie sie neu und versuchen Sie es noch einmal; es wurde nichts geändert.',
  'Somebody else changed this order in the meantime. Look at what changed, then decide again.': 'Inzwischen hat jemand anderes diesen Auftrag geändert. Sehen Sie nach, was sich geändert hat, und entscheiden Sie dann noch einmal.',
  'That time has just been taken. Choose another one; nothing was booked.': 'Dieser Termin wurde gerade vergeben. Wählen Sie einen anderen; es wurde nichts gebucht.',
  'The order is not at a step where this can be done.': 'Das ist bei diesem Auftrag zurzeit nicht möglich.',
  'Something is missing first.': 'Vorher fehlt noch etwas.',
  'Too many tries. Wait a few minutes, then try again.': 'Zu viele Versuche. Warten Sie einige Minuten, und versuchen Sie es dann noch einmal.',
  'The server has so much to do that this had to wait too long. Nothing was changed. Try again in a minute; if it happens often, tell whoever runs the server.':
    'Der Server hat so viel zu tun, dass dies zu lange warten musste. Es wurde nichts geändert. Versuchen Sie es in einer Minute noch einmal; geschieht es oft, sagen Sie es der Praxis.',
  'Something broke on the server. Nothing was changed. Try again; if it happens again, tell whoever runs the server the time.':
    'Auf dem Server ist etwas schiefgegangen. Es wurde nichts geändert. Versuchen Sie es noch einmal; geschieht es wieder, sagen Sie der Praxis die Uhrzeit.',
  'The server did not answer. What you entered is still here; try again when the network is back.':
    'Der Server hat nicht geantwortet. Was Sie eingegeben haben, ist noch hier; versuchen Sie es noch einmal, wenn das Netz wieder da ist.',
  'This page broke. Reload it; what was stored is safe.': 'Auf dieser Seite ist etwas schiefgegangen. Laden Sie sie neu; was gespeichert war, ist sicher.',
} as const;

export type ScreenSentence = keyof typeof screen;

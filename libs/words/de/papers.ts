/**
 * Letter, going-home sheet and consent copy. Each medical and legal sentence says no more and no less than the English
 * one: what may be stays "kann" or "könnte", and nobody is told what to decide.
 */
export const papers = {
  'Which dog': 'Welcher Hund',
  'Why a new letter': 'Warum ein neuer Brief',
  'What was wrong': 'Was falsch war',
  'What was done, and who read it': 'Was gemacht wurde, und wer es beurteilt hat',
  'What happened': 'Was geschehen ist',
  'What could not be read': 'Was nicht beurteilt werden konnte',
  'How sure this is': 'Wie sicher das ist',
  'What the reading cannot tell': 'Was die Beurteilung nicht sagen kann',
  'What matters too': 'Was auch zählt',
  'For breeding': 'Für die Zucht',
  'What to do next': 'Was als Nächstes zu tun ist',
  'When to see a vet': 'Wann Sie in die Praxis gehen',
  'After the sleep medicine': 'Nach dem Schlafmittel',
  'If you disagree': 'Wenn Sie anderer Meinung sind',
  'Who sees this': 'Wer das sieht',
  'How to check this paper': 'Wie Sie dieses Papier prüfen',
  Questions: 'Fragen',

  'A correction about {name}': 'Eine Berichtigung zu {name}',
  '{names} pictures need another try': 'Die Bilder von {name} brauchen einen neuen Versuch',
  '{names} {joints}': '{joints} von {name}',
  hips: 'Hüften',
  elbows: 'Ellbogen',
  'left hip': 'linke Hüfte',
  'right hip': 'rechte Hüfte',
  'left elbow': 'linker Ellbogen',
  'right elbow': 'rechter Ellbogen',

  'page {page} of {of}': 'Seite {page} von {of}',
  '{dog}, order {order}': '{dog}, Auftrag {order}',
  'Order {order}': 'Auftrag {order}',
  '{day}, {time} (UTC{offset})': '{day}, {time} Uhr (UTC{offset})',
  '{weeks}\u00a0weeks': '{weeks, plural, one {#\u00a0Woche} other {#\u00a0Wochen}}',
  '{months}\u00a0months': '{months}\u00a0Monate',
  '{years}\u00a0years': '{years}\u00a0Jahre',
  '{years}\u00a0years {months, plural, one {#\u00a0month} other {#\u00a0months}}': '{years}\u00a0Jahre {months, plural, one {#\u00a0Monat} other {#\u00a0Monate}}',
  'between {from} and {to}': '{from} bis {to}',
  'born {birth}': 'geboren: {birth}',
  'Transponder {number}.': 'Transponder {number}.',
  'No transponder.': 'Kein Transponder.',
  'Pictures taken on {day} at {place}, at {age}.': 'Bilder vom {day}, Ort: {place}, Alter an diesem Tag: {age}.',
  'our practice in {place}': 'unsere Praxis in {place}',
  'our practice': 'unsere Praxis',
  'You asked us for them.': 'Sie haben uns darum gebeten.',

  '{name} slept with medicine while {count, plural, one {one picture was} other {# pictures were}} taken.':
    '{name} hat mit einem Schlafmittel geschlafen, während {count, plural, one {ein Bild} other {# Bilder}} gemacht {count, plural, one {wurde} other {wurden}}.',
  '{name} was under anaesthesia while {count, plural, one {one picture was} other {# pictures were}} taken.':
    '{name} war in Narkose, während {count, plural, one {ein Bild} other {# Bilder}} gemacht {count, plural, one {wurde} other {wurden}}.',
  '{name} stayed awake while {count, plural, one {one picture was} other {# pictures were}} taken.':
    '{name} war wach, während {count, plural, one {ein Bild} other {# Bilder}} gemacht {count, plural, one {wurde} other {wurden}}.',
  'All of them went to the reader.': 'Alle gingen an die Auswertung.',
  'Not all of them went to the reader.': 'Nicht alle gingen an die Auswertung.',
  'read by {reader}, {centre}, on {day}. Protocol: {protocol}, version {version}': 'beurteilt von {reader}, {centre}, am {day}. Protokoll: {protocol}, Version {version}',
  '{centre} looked at the pictures on {day}. Some could not be used.': '{centre} hat die Bilder am {day} angesehen. Einige konnten nicht verwendet werden.',

  'Left and right are {names} own.': 'Links und rechts sind vom Hund aus gesehen.',
  '**For the dog:** {result}.': '**Für den Hund:** {result}.',
  'The reader adds: {comment}': 'Aus der Auswertung: {comment}',
  'Every joint that was sent could be read.': 'Jedes Gelenk, das eingeschickt wurde, konnte beurteilt werden.',
  'This is nobody’s fault.': 'Daran ist niemand schuld.',
  'the picture “{view}” was not taken. {reason}': 'Das Bild „{view}“ wurde nicht gemacht. {reason}',
  '{name} was examined like this before, read on {day}.': '{name} wurde schon früher so untersucht, beurteilt am {day}.',
  'from **{lower} to {upper}** for the {joint}': '**{lower} bis {upper}** ({joint})',
  'A second look at {name} might give {ranges}.': 'Eine zweite Untersuchung von {name} könnte {ranges} ergeben.',
  'We know how far two looks differ from a study in which dogs were X-rayed more than once ({source}).':
    'Wie weit zwei Untersuchungen voneinander abweichen, wissen wir aus einer Studie. Darin wurden Hunde mehr als einmal geröntgt ({source}).',
  'No published figure for this protocol says how far a second look might differ.':
    'Für dieses Protokoll gibt es keine veröffentlichte Zahl, die sagt, wie weit eine zweite Untersuchung abweichen könnte.',
  'It does not tell whether {name} has pain or will be lame. It does not tell whether {he} will get arthritis later. It does not tell what {his} pups will have.':
    'Sie sagt nicht, ob {name} Schmerzen hat oder lahmen wird. Sie sagt nicht, ob {name} später Arthrose bekommt. Sie sagt nicht, was die Welpen von {name} haben werden.',
  'Dogs with a worse reading have more trouble on the whole. But some dogs with a good reading have trouble. And many dogs with a poor one never need a vet for it.':
    'Hunde mit einer schlechteren Beurteilung haben insgesamt mehr Beschwerden. Aber manche Hunde mit einer guten haben auch Beschwerden. Und viele Hunde mit einer schlechten müssen deswegen nie in eine Praxis.',
  'How much {he} weighs, how fast {he} grew, how {he} plays and runs, and the joints of {his} parents, brothers and sisters. Keeping {him} lean helps {his} joints. Ask us what weight is right.':
    'Wie viel {name} wiegt, wie schnell {name} gewachsen ist, wie {name} spielt und läuft, und die Gelenke von Eltern und Geschwistern. Bleibt {name} schlank, hilft das den Gelenken. Fragen Sie uns, welches Gewicht richtig ist.',
  'This is one fact among many. Health, temper, how close two dogs are in blood, and how many dogs the breed has all matter too. Please ask us or your breed’s adviser before you decide. We do not decide for you.':
    'Das ist eine Tatsache von vielen. Auch die Gesundheit und das Wesen zählen, wie nah zwei Hunde verwandt sind, und wie viele Hunde die Rasse hat. Bitte fragen Sie uns oder die Zuchtberatung Ihrer Rasse, bevor Sie entscheiden. Wir entscheiden nicht für Sie.',
  'See a vet soon if {name} limps, is stiff after rest, hops with both hind legs at once, will not jump, or shows pain. Do so whatever this letter says.':
    'Gehen Sie bald in eine Praxis, wenn {name} lahmt, nach dem Ruhen steif ist, mit beiden Hinterbeinen zugleich hüpft, nicht springen will oder Schmerzen zeigt. Tun Sie das, was auch immer in diesem Brief steht.',
  'The sheet you took home on {day} was for the first days. If {his} breathing, drinking, coughing or mood has changed since then, call us.':
    'Das Blatt, das Sie am {day} mitgenommen haben, galt für die ersten Tage. Haben sich Atmen, Trinken, Husten oder Stimmung von {name} seitdem geändert, rufen Sie uns an.',
  'If {his} breathing, drinking, coughing or mood has changed since {day}, call us.': 'Haben sich Atmen, Trinken, Husten oder Stimmung von {name} seit dem {day} geändert, rufen Sie uns an.',
  'Sleep medicine always carries a small risk. Tell any vet that {he} had it, before {he} has it again. It should not be given again without a good reason.':
    'Ein Schlafmittel birgt immer ein kleines Risiko. Sagen Sie in jeder Praxis, dass {name} es hatte, bevor {name} wieder eines bekommt. Ohne guten Grund sollte es nicht noch einmal gegeben werden.',
  '{name} had no sleep medicine for these pictures. If {he} ever needs it, it carries a small risk. Talk with the vet first.':
    '{name} hatte für diese Bilder kein Schlafmittel. Wird je eines gebraucht, birgt es ein kleines Risiko. Sprechen Sie vorher mit der Praxis.',
  'You, our practice and the reading centre{others}. We show it to nobody else unless you agree or the law asks for it.':
    'Sie, unsere Praxis und die Auswertungsstelle{others}. Wir zeigen es sonst niemandem, außer wenn Sie zustimmen oder das Gesetz es verlangt.',
  ', and {other}': ', und {other}',
  'You said yes on {day} to the use of the reading in the breed’s figures, without your name. You can change that. The next count then leaves it out. What was counted or printed by then stays, as numbers without a name.':
    'Sie haben am {day} Ja gesagt: Die Beurteilung darf in die Zahlen der Rasse eingehen, ohne Ihren Namen. Sie können das ändern. Die nächste Zählung lässt sie dann weg. Was bis dahin gezählt oder gedruckt war, bleibt, als Zahlen ohne Namen.',
  'You said no on {day} to the use of the reading in the breed’s figures. So it is not used there.':
    'Sie haben am {day} Nein gesagt: Die Beurteilung soll nicht in die Zahlen der Rasse eingehen. Darum wird sie dort nicht verwendet.',
  'You took back your yes to the breed’s figures on {day}. What had been printed by then stays printed.':
    'Sie haben Ihr Ja zu den Zahlen der Rasse am {day} zurückgenommen. Was bis dahin gedruckt war, bleibt gedruckt.',
  'Open **{address}** and type **{serial}**. The page shows every fact printed on the certificate, and if it still stands. If one fact differs, the paper was changed.':
    'Öffnen Sie **{address}** und geben Sie **{serial}** ein. Die Seite zeigt jede Angabe, die auf der Bescheinigung steht, und ob sie noch gilt. Weicht eine Angabe ab, wurde das Papier verändert.',
  'This letter replaces the one of {day}. Please do not use that one any more.': 'Dieser Brief ersetzt den vom {day}. Bitte verwenden Sie jenen nicht mehr.',
  'The certificate {serial} no longer stands. Its page says so.': 'Die Bescheinigung {serial} gilt nicht mehr. Das steht auch auf ihrer Seite.',
  'Our letter of {day} was wrong. Please do not use it any more. We are sorry.': 'Unser Brief vom {day} war falsch. Bitte verwenden Sie ihn nicht mehr. Es tut uns leid.',
  'This is nobody’s fault. It says nothing about {names} joints.': 'Daran ist niemand schuld. Es sagt nichts über die Gelenke von {name}.',
  'New pictures may need sleep medicine again. That carries a small risk. So the vet looks at {name} first and talks with you. You may say no.':
    'Für neue Bilder kann wieder ein Schlafmittel nötig sein. Das birgt ein kleines Risiko. Darum wird {name} in der Praxis zuerst untersucht, und wir sprechen mit Ihnen. Sie dürfen Nein sagen.',
  'You may ask for a second look until {day}.': 'Sie können bis zum {day} um eine zweite Beurteilung bitten.',
  'You may ask for a second look.': 'Sie können um eine zweite Beurteilung bitten.',
  'It costs {money}.': 'Sie kostet {money}.',

  'Picture twenty dogs of {his} breed in a row, from the {low} {of} to the {high}. {name} may stand at any of the filled places, **{places}**. Nobody can say at which one.':
    'Stellen Sie sich zwanzig Hunde der Rasse in einer Reihe vor. An einem Ende sind die {of} {low}, am anderen {high}. {name} kann an jedem der gefüllten Plätze stehen, **{places}**. Niemand kann sagen, an welchem.',
  'These are fewer than 120 dogs. So the places may still change a lot.': 'Das sind weniger als 120 Hunde. Darum können sich die Plätze noch stark ändern.',
  'A place in the row is not a verdict. It tells no more than the reading does.': 'Ein Platz in der Reihe ist kein Urteil. Er sagt nicht mehr als die Beurteilung.',
  '{from} of every 20': '{from} von je 20',
  '{from} to {to} of every 20': '{from} bis {to} von je 20',
  'in {year}': 'im Jahr {year}',
  'from {from} to {to}': 'von {from} bis {to}',
  'The row is made of {n, number} dogs of the breed {breed}, X-rayed {age}, {years}. They were counted on {day}, and the row has not been changed since.':
    'Die Reihe besteht aus {n, number} Hunden der Rasse {breed}, geröntgt {age}, {years}. Gezählt wurde am {day}, und seitdem wurde die Reihe nicht geändert.',
  'Some were X-rayed with their whole litter, and for some a person chose to send the films. One of the two groups is too small to give numbers.':
    'Manche wurden mit ihrem ganzen Wurf geröntgt, und bei manchen hat ein Mensch entschieden, die Bilder einzuschicken. Eine der beiden Gruppen ist zu klein, um Zahlen zu nennen.',
  'For each of them a person chose to send the films. So they may not stand for the whole breed.':
    'Bei jedem von ihnen hat ein Mensch entschieden, die Bilder einzuschicken. Darum stehen sie vielleicht nicht für die ganze Rasse.',
  'All of them were X-rayed with their whole litter.': 'Alle wurden mit ihrem ganzen Wurf geröntgt.',
  '{litter} of them were X-rayed with their whole litter. For the other {chosen} a person chose to send the films.':
    '{litter} von ihnen wurden mit ihrem ganzen Wurf geröntgt. Bei den anderen {chosen} hat ein Mensch entschieden, die Bilder einzuschicken.',
  'Nobody knows where those would stand.': 'Niemand weiß, wo diese stehen würden.',
  'Fewer than 5 more dogs were X-rayed and not sent.': 'Weniger als 5 weitere Hunde wurden geröntgt und nicht eingeschickt.',
  'Some more dogs were X-rayed and not sent, fewer than one for every 20.': 'Einige weitere Hunde wurden geröntgt und nicht eingeschickt, weniger als einer auf je 20.',
  'For every 20, about {n, plural, one {# more dog was} other {# more dogs were}} X-rayed and not sent.':
    'Auf je 20 {n, plural, one {wurde etwa # weiterer Hund} other {wurden etwa # weitere Hunde}} geröntgt und nicht eingeschickt.',
  'If all dogs were looked at again, about one in {n} would change from the {low} half to the {high} half, or back ({source}). So may {name}, if near the middle.':
    'Würden alle Hunde noch einmal untersucht, so würde etwa einer von {n} von der {low} in die {high} Hälfte wechseln, oder zurück ({source}). Auch bei {name} kann das so sein, wenn der Platz nahe der Mitte liegt.',
  'Twenty dogs of the breed in a row, from the {low} {of} on the left to the {high} on the right. {name} may stand at any of places {places}; these are filled.':
    'Zwanzig Hunde der Rasse in einer Reihe. Links sind die {of} {low}, rechts {high}. {name} kann an jedem der Plätze {places} stehen; diese sind gefüllt.',
  'Beside them {n, plural, one {# dashed dog} other {# dashed dogs}}: X-rayed and not sent.':
    'Daneben {n, plural, one {# gestrichelter Hund} other {# gestrichelte Hunde}}: geröntgt und nicht eingeschickt.',
  tightest: 'am festesten',
  loosest: 'am lockersten',
  lowest: 'am niedrigsten',
  highest: 'am höchsten',
  number: 'Zahlen',
  tighter: 'festeren',
  looser: 'lockereren',
  lower: 'unteren',
  higher: 'oberen',
  'at 4 to 11 months': 'im Alter von 4 bis 11 Monaten',
  'at 12 to 23 months': 'im Alter von 12 bis 23 Monaten',
  'at two years or older': 'mit zwei Jahren oder älter',
  'a few': 'wenige',
  'Not every {region} could be read. So {name} is not set beside other dogs.':
    '{region, select, elbow {Nicht jeder Ellbogen} other {Nicht jede Hüfte}} konnte beurteilt werden. Darum wird {name} nicht neben andere Hunde gestellt.',
  'Signs of arthritis were seen. The number stays, and {name} is not set beside other dogs.':
    'Es wurden Zeichen von Arthrose gesehen. Die Zahl bleibt, und {name} wird nicht neben andere Hunde gestellt.',
  'A joint was operated on before. So {name} is not set beside other dogs.': 'Ein Gelenk wurde früher operiert. Darum wird {name} nicht neben andere Hunde gestellt.',
  'Not all of the pictures were there. So {name} is not set beside other dogs.': 'Nicht alle Bilder waren da. Darum wird {name} nicht neben andere Hunde gestellt.',
  'Nobody has shown yet how far two readings of this kind differ. A place among other dogs would look surer than it is. So we give none.':
    'Noch niemand hat gezeigt, wie weit zwei Beurteilungen dieser Art voneinander abweichen. Ein Platz neben anderen Hunden sähe sicherer aus, als er ist. Darum nennen wir keinen.',
  'You have not said yes to the breed’s figures. So {name} is not set beside other dogs of the breed.':
    'Sie haben zu den Zahlen der Rasse nicht Ja gesagt. Darum wird {name} nicht neben andere Hunde der Rasse gestellt.',
  'The dogs of {his} breed and age have not been counted yet, or there are fewer than five. So there is no row of dogs to show.':
    'Die Hunde dieser Rasse und dieses Alters wurden noch nicht gezählt, oder es sind weniger als fünf. Darum gibt es keine Reihe von Hunden zu zeigen.',
  'Only {n} dogs of {his} breed and age had been read when they were last counted. A picture of so few would mislead. It is drawn from twenty dogs on.':
    'Nur {n} Hunde dieser Rasse und dieses Alters waren beurteilt, als zuletzt gezählt wurde. Ein Bild von so wenigen würde in die Irre führen. Es wird ab zwanzig Hunden gezeichnet.',

  'Nothing has to be done now. No new picture is needed.': 'Jetzt muss nichts getan werden. Es ist kein neues Bild nötig.',
  'Talk with us before you decide about breeding.': 'Sprechen Sie mit uns, bevor Sie über die Zucht entscheiden.',
  'One joint could not be read. Ask us whether a new picture makes sense.': 'Ein Gelenk konnte nicht beurteilt werden. Fragen Sie uns, ob ein neues Bild sinnvoll ist.',
  'The pictures are still to be taken.': 'Die Bilder müssen noch gemacht werden.',
  'Some pictures are still to be taken.': 'Einige Bilder müssen noch gemacht werden.',
  'Some pictures have to be taken again.': 'Einige Bilder müssen noch einmal gemacht werden.',
  'The pictures are about to be sent.': 'Die Bilder werden demnächst eingeschickt.',
  'The pictures are with the reader.': 'Die Bilder sind in der Auswertung.',
  'You get a letter of its own.': 'Dazu bekommen Sie einen eigenen Brief.',
  'Tell us. Another reader then sees the same pictures, and not the first reading. What that reader finds then stands, whichever way it goes.':
    'Sagen Sie es uns. Dann sieht eine andere Fachperson dieselben Bilder, und nicht die erste Beurteilung. Was sie findet, gilt dann, wie auch immer es ausfällt.',
  'on working days': 'an Werktagen',
  'At night and on free days the same number says who is on call.': 'Nachts und an freien Tagen sagt dieselbe Nummer, wer Bereitschaft hat.',
  vet: 'Tierärztin/Tierarzt',
  nurse: 'tiermedizinische Fachkraft',
  owner: 'Besitzerin/Besitzer',
  agent: 'bevollmächtigt',
  'collects the dog': 'holt den Hund ab',

  'The result in our earlier letter was taken back, as we wrote to you. Here is the result of these pictures.':
    'Das Ergebnis in unserem früheren Brief wurde zurückgenommen, wie wir Ihnen geschrieben haben. Hier ist das Ergebnis dieser Bilder.',
  'Another reader has read the same pictures, without the first reading. As was said beforehand, this second reading stands, whichever way it went.':
    'Eine andere Fachperson hat dieselben Bilder beurteilt, ohne die erste Beurteilung zu sehen. Wie vorher gesagt, gilt diese zweite Beurteilung, wie auch immer sie ausgefallen ist.',
  'The centre has sent a new reading of the same pictures.': 'Die Auswertungsstelle hat eine neue Beurteilung derselben Bilder geschickt.',
  'It replaces the one in our letter of {day}.': 'Sie ersetzt die in unserem Brief vom {day}.',
  'Our letter of {day} gave a result that does not belong to {dog}.': 'Unser Brief vom {day} nannte ein Ergebnis, das nicht zu {dog} gehört.',
  '{dog} has no result for this study yet.': '{dog} hat für diese Untersuchung noch kein Ergebnis.',
  'The new visit is booked. You have a mail with the day, and everything is asked of you again.':
    'Der neue Termin ist gebucht. Sie haben eine Mail mit dem Tag, und alles wird Sie noch einmal gefragt.',
  'We call you to agree whether and when the pictures are taken again.': 'Wir rufen Sie an, um zu vereinbaren, ob und wann die Bilder noch einmal gemacht werden.',
  'Your dog rests for some days first; we say how many.': 'Ihr Hund ruht zuerst einige Tage; wir sagen, wie viele.',
  'The pictures that were taken are kept.': 'Die Bilder, die gemacht wurden, werden aufbewahrt.',
  '{study}, letter to {name}': '{study}, Brief an {name}',
  '{study}, result sheet': '{study}, Ergebnisblatt',
  'Correction, letter to {name}': 'Berichtigung, Brief an {name}',
  'Pictures again, letter to {name}': 'Bilder noch einmal, Brief an {name}',
  'Going-home sheet': 'Blatt für zu Hause',

  '{name} goes home': '{name} geht nach Hause',
  '{place}. Going-home sheet, {day}': '{place}. Blatt für zu Hause, {day}',
  'Normal tonight': 'Heute Nacht normal',
  'What to do': 'Was zu tun ist',
  'Call at once if {name}': 'Rufen Sie sofort an, wenn {name}',
  '**or if you are worried.**': '**oder wenn Sie sich Sorgen machen.**',
  '{name} slept with medicine from **{from} to {until}** and was woken with another one.':
    '{name} hat mit einem Schlafmittel geschlafen, von **{from} bis {until} Uhr**, und wurde mit einem anderen Mittel geweckt.',
  '{name} slept with medicine from **{from} to {until}** and then woke up.': '{name} hat mit einem Schlafmittel geschlafen, von **{from} bis {until} Uhr**, und ist dann aufgewacht.',
  'At **{at}** {he} was awake enough to go home with you.': 'Um **{at} Uhr** war {name} wach genug, um mit Ihnen nach Hause zu gehen.',
  'Tell any vet that {he} had sleep medicine today, before {he} has it again.': 'Sagen Sie in jeder Praxis, dass {name} heute ein Schlafmittel hatte, bevor {name} wieder eines bekommt.',
  'Text {version}, approved by {name}, {role}, {day}.': 'Text {version}, freigegeben von {name}, {role}, {day}.',
  'explained by': 'erklärt von',
  to: 'an',
  'time, hand': 'Zeit, Unterschrift',
  'now and all night': 'jetzt und die ganze Nacht',
  'The pictures are done.': 'Die Bilder sind fertig.',
  'Not all pictures were taken. Missing: {missing}. We will call you.': 'Es wurden nicht alle Bilder gemacht. Es fehlen: {missing}. Wir rufen Sie an.',
  'Not all pictures were taken. We stopped, because that was better for the dog. Missing: {missing}. We will call you.':
    'Es wurden nicht alle Bilder gemacht. Wir haben aufgehört, weil das für den Hund besser war. Es fehlen: {missing}. Wir rufen Sie an.',
  'What the pictures show comes by letter. It mostly takes a few weeks.': 'Was die Bilder zeigen, kommt mit einem Brief. Das dauert meist einige Wochen.',
  'a vet of the practice': 'die Praxis',

  'What was agreed for {name}': 'Was für {name} vereinbart wurde',
  'This is your copy of what you were told and what you answered. You may take back a yes at any time. Call us or write to us.':
    'Das ist Ihre Kopie: was Ihnen gesagt wurde und was Sie geantwortet haben. Ein Ja können Sie jederzeit zurücknehmen. Rufen Sie uns an oder schreiben Sie uns.',
  'What can no longer be undone': 'Was nicht mehr rückgängig gemacht werden kann',
  '**Taken back:** {moment}.': '**Zurückgenommen:** {moment}.',
  'Text version {version}': 'Fassung des Textes: {version}',
  yes: 'ja',
  no: 'nein',
  'Signature of {name}': 'Unterschrift von {name}',
  '**{name}**, {role}. Signed {moment}, {how}.': '**{name}**, {role}. Unterschrieben am {moment}, {how}.',
  'Explained by {name}, {role}.': 'Erklärt von {name}, {role}.',
  'Answered by {name}, {role}.': 'Beantwortet von {name}, {role}.',
  'at the practice': 'in der Praxis',
  'by link': 'über den Link',
  'This text was shown in {language}.': 'Dieser Text wurde auf {language} gezeigt.',
  Sedation: 'Sedierung',
  'The pictures': 'Die Bilder',
  'Sending every film taken': 'Einschicken aller gemachten Bilder',
  'Use in the breed’s statistics': 'Verwendung in der Statistik der Rasse',
  'Once the dog sleeps, the medicine cannot be taken back. It is watched until it is awake.':
    'Schläft der Hund einmal, lässt sich das Mittel nicht zurücknehmen. Er wird überwacht, bis er wach ist.',
  'Pictures that have been sent cannot be called back; the centre is told.': 'Eingeschickte Bilder lassen sich nicht zurückholen; die Auswertungsstelle wird benachrichtigt.',
  'What has been sent cannot be called back.': 'Was eingeschickt ist, lässt sich nicht zurückholen.',
  'What has been counted and printed stays printed.': 'Was gezählt und gedruckt ist, bleibt gedruckt.',
  'In an emergency': 'Im Notfall',
  'do not revive': 'nicht wiederbeleben',
  'try to revive': 'Wiederbelebung versuchen',
  'Spending limit': 'Höchstbetrag',
  'Number answered that day': 'Nummer, die an dem Tag erreichbar ist',
  none: 'keine',
  'May collect': 'Abholen darf',
  'nobody named': 'niemand genannt',
  '{study}. {count, plural, one {One X-ray picture is} other {# X-ray pictures are}} taken while your dog sleeps: {views}.':
    '{study}. {count, plural, one {Ein Röntgenbild wird} other {# Röntgenbilder werden}} gemacht, während Ihr Hund schläft: {views}.',
  'For some of them the legs are gently pushed, in the way the method asks for.': 'Für einige davon werden die Beine sanft gedrückt, so wie das Verfahren es verlangt.',
  'The pictures are read at {centre}, by somebody with no stake in the outcome.':
    'Die Bilder werden an dieser Stelle beurteilt: {centre}. Wer sie beurteilt, hat keinen Vorteil von dem Ergebnis.',
  'a reading centre': 'eine Auswertungsstelle',
  'A picture that is not good enough may be taken again, while your dog sleeps well. Nobody keeps a dog asleep for a picture.':
    'Ein Bild, das nicht gut genug ist, darf noch einmal gemacht werden, solange Ihr Hund gut schläft. Niemand hält einen Hund für ein Bild im Schlaf.',
  'X-rays are a small dose of radiation. Nobody is held to the table who can be spared.':
    'Röntgen ist eine kleine Menge Strahlung. Niemand bleibt am Tisch, der dort entbehrt werden kann.',
  'You can take this yes back at any time. Pictures that have been sent cannot be called back; the centre is told.':
    'Dieses Ja können Sie jederzeit zurücknehmen. Eingeschickte Bilder lassen sich nicht zurückholen; die Auswertungsstelle wird benachrichtigt.',
} as const;

/** What stands around every page: strip, search, tour, sign-in, the first start. */
export const around = {
  'Nothing found for “{asked}”.': 'Nichts gefunden zu „{asked}“.',
  'Other practices’ dogs are never shown here.': 'Hunde anderer Praxen werden hier nie gezeigt.',
  'Sign out': 'Abmelden',
  'Find a dog, person or order': 'Hund, Person oder Auftrag suchen',
  'Transponder, dog, owner, phone or order number': 'Transponder, Hund, Name, Telefon oder Auftragsnummer',
  Pages: 'Seiten',
  Today: 'Heute',
  Calendar: 'Kalender',
  Scheme: 'Programm',
  Trouble: 'Störung',
  'There is no page here': 'Hier gibt es keine Seite',
  'The address may have been cut off. Links in mails must be copied whole.': 'Vielleicht ist die Adresse abgeschnitten. Links aus Mails müssen ganz kopiert werden.',
  'Go to today': 'Zum heutigen Tag',

  'A short tour': 'Ein kurzer Rundgang',
  'New here? {at} of {count}.': 'Neu hier? {at} von {count}.',
  '{at} of {count}.': '{at} von {count}.',
  'Show me where': 'Zeigen, wo',
  Back: 'Zurück',
  Next: 'Weiter',
  'More in Help': 'Mehr in der Hilfe',
  'Leave the tour': 'Rundgang verlassen',
  'Today shows each visit as a line with knots. A ring is a dog that is here; beside a gap stands what is missing and who can supply it.':
    'Heute zeigt jeden Termin als Linie mit Knoten. Ein Ring ist ein Hund, der da ist; neben einer Lücke steht, was fehlt und wer es beschaffen kann.',
  'Press / and type a transponder number, a dog’s or owner’s name, a phone or order number: the answer to “where is my dog’s result?” is one line.':
    'Drücken Sie / und tippen Sie Transponder, Hund, Name, Telefon oder Auftragsnummer: Die Antwort auf „Wo bleibt das Ergebnis meines Hundes?“ ist eine Zeile.',
  'B books a visit. Everything can be typed; a number chooses a time, a letter answers a question, Ctrl and Enter book.':
    'B bucht einen Termin. Alles geht mit der Tastatur: Eine Ziffer wählt die Zeit, ein Buchstabe beantwortet eine Frage, Strg und Eingabe buchen.',
  'The calendar shows rooms and people. Drag a visit, or choose it and say where to.': 'Der Kalender zeigt Räume und Personen. Ziehen Sie einen Termin, oder wählen Sie ihn aus und sagen Sie, wohin.',
  'What nobody answers comes up under Also waits, with the day on which it is due.': 'Was niemand beantwortet, erscheint unter „Wartet außerdem“, mit dem Tag, an dem es fällig ist.',
  'Today shows who is here and what each dog waits for. A bar at the start of a row means that it waits for you.':
    'Heute zeigt, wer da ist und worauf jeder Hund wartet. Ein Balken am Anfang der Zeile heißt: Er wartet auf Sie.',
  'On an order, the first button under What it waits for is the next thing to do. It never greys out: pressed too early, it says what is missing.':
    'Bei einem Auftrag ist der erste Knopf unter „Worauf er wartet“ das Nächste, was zu tun ist. Er wird nie grau: Zu früh gedrückt, sagt er, was fehlt.',
  'While a dog sleeps, Beside the dog is made for a tablet: big keys, readings as small curves. Without a network entries wait on the tablet and go by themselves, in order.':
    'Während ein Hund schläft, ist „Beim Hund“ für ein Tablet gemacht: große Tasten, Messungen als kleine Kurven. Ohne Netz warten Einträge auf dem Tablet und gehen später von selbst ab, der Reihe nach.',
  'Anybody may press Stop imaging, at any time and without a reason, also without network.': '„Röntgen beenden“ darf jede und jeder drücken, jederzeit und ohne Grund, auch ohne Netz.',
  'Under Practice are people and their accreditation, rooms, devices and their checks, prices, centres and the texts that owners sign.':
    'Unter Praxis stehen Personen und ihre Zulassung, Räume, Geräte und ihre Prüfungen, Preise, Auswertungsstellen und die Texte, die unterschrieben werden.',
  'What runs out before a booked day is found each night, and the order says so with its ways out.':
    'Was vor einem gebuchten Tag abläuft, wird jede Nacht gefunden; der Auftrag sagt es, mit den Auswegen.',
  'Requests of people about their own data have a clock and their own page.': 'Anfragen zu eigenen Daten haben eine Frist und eine eigene Seite.',
  'Packages are listed by the day they are due. You read blind: no owner, no practice, no earlier reading.':
    'Sendungen sind nach dem Tag geordnet, an dem sie fällig sind. Sie beurteilen verblindet: ohne Namen, ohne Praxis, ohne frühere Beurteilung.',
  'Numbers 1 to 9 change the film. Each joint needs a value, or a reason why there is none.': 'Die Ziffern 1 bis 9 wechseln das Bild. Jedes Gelenk braucht einen Wert, oder einen Grund, warum es keinen gibt.',
  'Films that cannot be read are sent back with the view and the reason, so that the dog is asked back only once.':
    'Bilder, die nicht zu beurteilen sind, gehen mit Aufnahme und Grund zurück, damit der Hund nur einmal wiederkommen muss.',
  'The scheme’s page counts where the studies stand. Each number opens the list behind it.': 'Die Seite des Programms zählt, wo die Untersuchungen stehen. Jede Zahl öffnet die Liste dahinter.',
  'Times and readers shows how long results take with the open ones in, and what lies beyond chance. There is no ranking.':
    '„Zeiten und Auswertende“ zeigt, wie lange Ergebnisse brauchen, die offenen mitgezählt, und was über den Zufall hinausgeht. Eine Rangliste gibt es nicht.',
  'A breed’s figures are frozen once a year, so that a dog’s place on its paper does not drift.':
    'Die Zahlen einer Rasse werden einmal im Jahr festgehalten, damit sich der Platz eines Hundes auf seinem Papier nicht verschiebt.',

  'This is a demo': 'Dies ist eine Vorführung',
  'invented people and dogs; choose who you are': 'erfundene Personen und Hunde; wählen Sie, wer Sie sind',
  'Your mail address is needed.': 'Ihre Mailadresse wird gebraucht.',
  'Your password is needed.': 'Ihr Passwort wird gebraucht.',
  'Sign in': 'Anmelden',
  Password: 'Passwort',

  'first start': 'erster Start',
  'Set up this server': 'Diesen Server einrichten',
  'It is empty. Three things are needed once; everything can be amended later.': 'Er ist leer. Drei Angaben werden einmal gebraucht; alles lässt sich später ergänzen.',
  'The scheme': 'Das Programm',
  'Name of the scheme': 'Name des Programms',
  Country: 'Land',
  'Its three letters, like EUR.': 'Die drei Buchstaben, zum Beispiel EUR.',
  'Days and times of the practice are counted here.': 'Hiernach werden Tage und Zeiten der Praxis gezählt.',
  'The first practice': 'Die erste Praxis',
  'Owners see this number on every paper.': 'Diese Nummer steht auf jedem Papier.',
  'Its manager': 'Die Praxisleitung',
  'Your name': 'Ihr Name',
  'Your mail address': 'Ihre Mailadresse',
  'You sign in with it.': 'Damit melden Sie sich an.',
  'Nothing was created yet.': 'Es ist noch nichts angelegt.',
  'The marked fields say what to change.': 'Die markierten Felder sagen, was zu ändern ist.',
  'Create and go on to the practice': 'Anlegen und weiter zur Praxis',
} as const;

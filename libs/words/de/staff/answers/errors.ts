/** The sentence of each error code, where no use case gives a more exact one. */
export const errors = {
  'Something in the form is missing or not right. The marked fields say what to change.':
    'Im Formular fehlt etwas oder stimmt etwas nicht. Die markierten Felder sagen, was zu ändern ist.',
  'Please sign in.': 'Bitte melden Sie sich an.',
  'Name and password do not belong together. Try again, or ask your practice manager for a new password.':
    'Name und Passwort gehören nicht zusammen. Versuchen Sie es noch einmal, oder bitten Sie Ihre Praxisleitung um ein neues Passwort.',
  'This link is not valid or has run out. Ask the practice to send a new one.':
    'Dieser Link gilt nicht oder ist abgelaufen. Bitten Sie die Praxis, einen neuen zu schicken.',
  'The page is too old to send this. Reload it and try again; nothing was changed.':
    'Die Seite ist zu alt, um das zu senden. Laden Sie sie neu und versuchen Sie es noch einmal; es wurde nichts geändert.',
  'Your role does not do this. The order names who does.': 'Das gehört nicht zu Ihren Aufgaben. Der Auftrag nennt, wer es tut.',
  'There is nothing here under that number.': 'Unter dieser Nummer gibt es hier nichts.',
  'Somebody else changed this order in the meantime. Look at what changed, then decide again.':
    'Jemand anders hat diesen Auftrag inzwischen geändert. Sehen Sie nach, was sich geändert hat, und entscheiden Sie dann neu.',
  'That time has just been taken. Choose another one; nothing was booked.':
    'Diese Zeit wurde gerade vergeben. Wählen Sie eine andere; es wurde nichts gebucht.',
  'This is already there.': 'Das gibt es schon.',
  'The order is not at a step where this can be done.': 'Der Auftrag steht an keiner Stelle, an der das geht.',
  'Something is missing first.': 'Vorher fehlt noch etwas.',
  'The dog cannot have this study on that day.': 'Der Hund kann diese Untersuchung an diesem Tag nicht bekommen.',
  'This file is not an image that can be used.': 'Diese Datei ist kein Bild, das sich verwenden lässt.',
  'The file is too large.': 'Die Datei ist zu groß.',
  'Too many tries. Wait a few minutes, then try again.': 'Zu viele Versuche. Warten Sie einige Minuten, und versuchen Sie es dann noch einmal.',
  'The server has so much to do that this had to wait too long. Nothing was changed. Try again in a minute; if it happens often, tell whoever runs the server.':
    'Der Server hat so viel zu tun, dass das zu lange warten musste. Es wurde nichts geändert. Versuchen Sie es in einer Minute noch einmal; kommt es oft vor, sagen Sie es der Person, die den Server betreibt.',
  'The server has no room left, so this was not stored and nothing was changed. Keep the file, ask whoever runs the server to make room, then send it again.':
    'Der Server hat keinen Platz mehr; darum wurde das nicht gespeichert und nichts geändert. Behalten Sie die Datei, bitten Sie die Person, die den Server betreibt, Platz zu schaffen, und senden Sie sie dann noch einmal.',
  'This message is not signed as it must be. Nothing was changed.':
    'Diese Nachricht ist nicht so unterschrieben, wie sie sein muss. Es wurde nichts geändert.',
  'This message was received before. Nothing was changed.': 'Diese Nachricht kam schon einmal an. Es wurde nichts geändert.',
  'Something broke on the server. Nothing was changed. Try again; if it happens again, tell whoever runs the server the time.':
    'Auf dem Server ist etwas kaputtgegangen. Es wurde nichts geändert. Versuchen Sie es noch einmal; kommt es wieder vor, sagen Sie der Person, die den Server betreibt, die Uhrzeit.',
} as const;

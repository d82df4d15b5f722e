/** By which way films go to a centre, and how far they are. */
export const channels = {
  'Handed over': 'Übergeben',
  'Write the whole address, beginning with https://.': 'Schreiben Sie die ganze Adresse, beginnend mit https://.',
  'Write the address of the centre’s DICOMweb service.': 'Schreiben Sie die Adresse des DICOMweb-Dienstes der Stelle.',
  'Write the address of the object store.': 'Schreiben Sie die Adresse des Objektspeichers.',
  'Write the name of the bucket.': 'Schreiben Sie den Namen des Buckets.',
  'Write the key id that the centre gave you.': 'Schreiben Sie die Schlüsselkennung, die Sie von der Stelle haben.',
  'Write the secret key that the centre gave you.': 'Schreiben Sie den geheimen Schlüssel, den Sie von der Stelle haben.',
  'A bucket’s name has 3 to 63 small letters, digits, dots and hyphens.': 'Der Name eines Buckets hat 3 bis 63 kleine Buchstaben, Ziffern, Punkte und Bindestriche.',
  'At most 4,000 signs.': 'Höchstens 4.000 Zeichen.',
  'Write the password that goes with the name.': 'Schreiben Sie das Passwort, das zum Namen gehört.',
  'Films go by:': 'Aufnahmen gehen über:',
  'Films go by': 'Aufnahmen gehen über',
  'A mail with a link to the films': 'Eine Mail mit einem Link zu den Aufnahmen',
  'A mail with a link to a DICOM medium (zip with DICOMDIR)': 'Eine Mail mit einem Link zu einem DICOM-Datenträger (Zip mit DICOMDIR)',
  'DICOMweb: into the centre’s archive (STOW-RS)': 'DICOMweb: in das Archiv der Stelle (STOW-RS)',
  'Signed upload to the centre’s object store (S3)': 'Signiertes Hochladen in den Objektspeicher der Stelle (S3)',
  'With a password.': 'Mit Passwort.',
  'Entered by {name}, {at}.': 'Eingetragen von {name}, {at}.',
  'Change how films go there': 'Ändern, wie Aufnahmen dorthin gehen',
  'Send this way from now on': 'Von jetzt an so senden',
  'Address of the DICOMweb service': 'Adresse des DICOMweb-Dienstes',
  'Such as https://archive.centre.example/dicom-web. The part with “studies” is added by the program.': 'Etwa https://archive.centre.example/dicom-web. Den Teil mit „studies“ ergänzt das Programm.',
  'Name to sign in with': 'Name für die Anmeldung',
  'Empty: what is entered below is sent as a token, or nothing is sent.': 'Leer: Was darunter steht, wird als Token gesendet, oder es wird nichts gesendet.',
  'Password or token': 'Passwort oder Token',
  'It is not shown again; with the next change it has to be entered anew.': 'Es wird nicht wieder gezeigt; mit der nächsten Änderung ist es neu einzugeben.',
  'Address of the object store': 'Adresse des Objektspeichers',
  'Such as https://objects.centre.example, without the bucket.': 'Etwa https://objects.centre.example, ohne den Bucket.',
  Bucket: 'Bucket',
  Region: 'Region',
  'Empty unless the centre names one.': 'Leer, wenn die Stelle keine nennt.',
  'Key id': 'Schlüsselkennung',
  'Secret key': 'Geheimer Schlüssel',
  'Try the connection': 'Verbindung versuchen',
  'Try the connection to {centre}': 'Verbindung zu {centre} versuchen',
  'The line is being tried.': 'Die Verbindung wird versucht.',
  'Tried by {name}, {at}.': 'Versucht von {name}, {at}.',
  'It was taken ({status}).': 'Angenommen ({status}).',
  '{host} is reached, lets us in and answers. Nothing of a dog was sent.': '{host} ist erreicht, lässt uns ein und antwortet. Von einem Hund wurde nichts gesendet.',
  '{host} is reached, and the key lets us look into the bucket. Nothing was stored there: whether films may be stored is known when the first one goes.':
    '{host} ist erreicht, und der Schlüssel lässt uns in den Bucket sehen. Abgelegt wurde nichts: Ob Aufnahmen abgelegt werden dürfen, zeigt sich mit der ersten.',
  '{host} is reached, and refuses the name, password or key ({status}). Ask there for the right ones, and enter them anew.':
    '{host} ist erreicht und weist Name, Passwort oder Schlüssel zurück ({status}). Fragen Sie dort nach den richtigen und geben Sie sie neu ein.',
  '{host} is reached, and refuses the key, or lets it not look into the bucket ({status}). Ask there for a key that may store and look, and enter it anew.':
    '{host} ist erreicht und weist den Schlüssel zurück oder lässt ihn nicht in den Bucket sehen ({status}). Fragen Sie dort nach einem Schlüssel, der ablegen und nachsehen darf, und geben Sie ihn neu ein.',
  '{host} is reached, and knows no such service at this address ({status}). Ask there for the exact address.':
    '{host} ist erreicht und kennt unter dieser Adresse keinen solchen Dienst ({status}). Fragen Sie dort nach der genauen Adresse.',
  '{host} says that nothing is wanted there any more ({status}). Ask there, or end it.': '{host} sagt, dass dort nichts mehr gewünscht ist ({status}). Fragen Sie dort, oder beenden Sie es.',
  '{host} is reached, and is busy or broken ({status}). Try again later; if it stays so, tell whoever runs it.':
    '{host} ist erreicht und überlastet oder gestört ({status}). Versuchen Sie es später noch einmal; bleibt es so, sagen Sie es denen, die es betreiben.',
  '{host} is reached, and answers what was not expected ({status}). Ask there what that means.':
    '{host} ist erreicht und antwortet anders als erwartet ({status}). Fragen Sie dort, was das heißt.',
  'The name {host} is not found. Look at its spelling; if it is right, ask whoever runs this server whether names are found here.':
    'Der Name {host} wird nicht gefunden. Sehen Sie die Schreibweise an; stimmt sie, fragen Sie, wer diesen Server betreibt, ob Namen hier gefunden werden.',
  '{host} is reached, and its certificate is not trusted ({detail}). Nothing was sent. Whoever runs it renews or repairs the certificate.':
    '{host} ist erreicht, und seinem Zertifikat wird nicht vertraut ({detail}). Gesendet wurde nichts. Wer es betreibt, erneuert oder berichtigt das Zertifikat.',
  '{host} leads into this server’s own network, where nothing is called. Enter an address in the open internet; if it is meant so, whoever runs this server names it in OUTGOING_ALLOW.':
    '{host} führt in das eigene Netz dieses Servers, wo nichts gerufen wird. Geben Sie eine Adresse im offenen Internet ein; ist es so gemeint, nennt, wer diesen Server betreibt, sie in OUTGOING_ALLOW.',
  '{host} sends callers on to another address, which is not followed. Enter the address that it leads to.':
    '{host} schickt weiter an eine andere Adresse; dem wird nicht gefolgt. Geben Sie die Adresse ein, zu der es führt.',
  '{host} would be called in the clear. Enter an address that begins with https://.': '{host} würde unverschlüsselt gerufen. Geben Sie eine Adresse ein, die mit https:// beginnt.',
  'This is no address that can be called. Enter one that begins with https:// and names a host.':
    'Diese Adresse kann nicht gerufen werden. Geben Sie eine ein, die mit https:// beginnt und einen Rechner nennt.',
  '{host} is found, and nobody listens there. Look at the port in the address; if it is right, ask whether the service is running.':
    '{host} ist gefunden, aber dort hört niemand zu. Sehen Sie den Port in der Adresse an; stimmt er, fragen Sie, ob der Dienst läuft.',
  '{host} did not answer in time. Try again later; if it stays so, ask whether a firewall keeps this server out.':
    '{host} hat nicht rechtzeitig geantwortet. Versuchen Sie es später noch einmal; bleibt es so, fragen Sie, ob eine Firewall diesen Server abhält.',
  'The line to {host} broke ({detail}). Try again; if it stays so, tell whoever runs it.':
    'Die Verbindung zu {host} ist abgebrochen ({detail}). Versuchen Sie es noch einmal; bleibt es so, sagen Sie es denen, die es betreiben.',
  'The password or secret cannot be read on this server any more, and nothing was sent. Enter it anew, or make a new one.':
    'Passwort oder Geheimnis lässt sich auf diesem Server nicht mehr lesen; gesendet wurde nichts. Geben Sie es neu ein, oder legen Sie ein neues an.',
  'The password cannot be read any more.': 'Das Passwort lässt sich nicht mehr lesen.',
  'It was sealed with a key that this server does not have. No film goes this way until it is entered anew, or whoever runs the server brings the key back.':
    'Es wurde mit einem Schlüssel versiegelt, den dieser Server nicht hat. So geht keine Aufnahme hinaus, bis es neu eingegeben ist oder, wer den Server betreibt, den Schlüssel zurückbringt.',
  'no reason given': 'ohne Grund',
  'It has stopped.': 'Es ist stehen geblieben.',
  'Not all were taken.': 'Nicht alle wurden angenommen.',
  'A person has ended it.': 'Ein Mensch hat es beendet.',
  '{study}: how many films the centre has': '{study}: wie viele Aufnahmen die Stelle hat',
  '{there} of {all, plural, one {# image} other {# images}}.': '{there} von {all, plural, one {# Bild} other {# Bildern}}.',
  'The archive was told not to use {films, plural, one {# film} other {# films}} any more.':
    'Dem Archiv wurde gesagt, {films, plural, one {# Aufnahme} other {# Aufnahmen}} nicht mehr zu verwenden.',
  'The archive is being told not to use {films, plural, one {# film} other {# films}} any more.':
    'Dem Archiv wird gesagt, {films, plural, one {# Aufnahme} other {# Aufnahmen}} nicht mehr zu verwenden.',
  'This film is of another dog.': 'Diese Aufnahme zeigt einen anderen Hund.',
  'This film was a test and shows no dog.': 'Diese Aufnahme war eine Probe und zeigt keinen Hund.',
  'The owner has withdrawn consent. These films are not to be read.': 'Der Besitzer hat die Einwilligung zurückgezogen. Diese Aufnahmen sind nicht zu lesen.',
  'These films are read by another centre, and are not to be read here.': 'Diese Aufnahmen wertet eine andere Stelle aus; hier sind sie nicht zu lesen.',
  'This film is to be taken again.': 'Diese Aufnahme ist noch einmal zu machen.',
  '{by} told {whom} at the centre by {how, select, phone {phone} other {mail}} on {moment} not to use {films, plural, one {# film} other {# films}} any more.':
    '{by} hat {whom} an der Stelle {how, select, phone {am Telefon} other {per Mail}} gesagt ({moment}), {films, plural, one {# Aufnahme} other {# Aufnahmen}} nicht mehr zu verwenden.',
  'The archive does not take the note that {films, plural, one {# film is} other {# films are}} not to be used any more.':
    'Das Archiv nimmt die Mitteilung nicht an, dass {films, plural, one {# Aufnahme nicht mehr zu verwenden ist} other {# Aufnahmen nicht mehr zu verwenden sind}}.',
  'The archive could not be told that {films, plural, one {# film is} other {# films are}} not to be used any more.':
    'Dem Archiv konnte nicht gesagt werden, dass {films, plural, one {# Aufnahme nicht mehr zu verwenden ist} other {# Aufnahmen nicht mehr zu verwenden sind}}.',
} as const;

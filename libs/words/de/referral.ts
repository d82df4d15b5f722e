/** The letter to a colleague who is asked to take the pictures. */
export const referral = {
  'Referral of {name}': 'Überweisung von {name}',
  'Referral to {practice}': 'Überweisung an {practice}',
  'Please take these pictures of {name}': 'Bitte machen Sie diese Bilder von {name}',
  '**{names}.** {breed}, {sex}, born {birth}, transponder {number}.': '**{names}.** {breed}, {sex}, geboren: {birth}, Transponder {number}.',
  '**{names}.** {breed}, {sex}, born {birth}, no transponder.': '**{names}.** {breed}, {sex}, geboren: {birth}, kein Transponder.',
  'The owner has agreed that you see this order. Please say yes or no by **{day}**: you find it under Orders, as {order}.':
    'Die Besitzerin oder der Besitzer ist einverstanden, dass Sie diesen Auftrag sehen. Bitte sagen Sie bis **{day}** zu oder ab: Sie finden ihn unter „Aufträge“, als {order}.',
  '{study}, version {version}': '{study}, Version {version}',
  '{views}. Every film goes to {centre}.': '{views}. Alle Bilder gehen an: {centre}.',
  'What the owner said of its health': 'Was zur Gesundheit gesagt wurde',
  'not known': 'nicht bekannt',
  'Whether the dog is fit for sedation or anaesthesia is for the veterinarian who examines it on the day, under the law and the codes of the place. Nothing is prescribed here.':
    'Ob der Hund für eine Sedierung oder Narkose geeignet ist, entscheidet die Tierärztin oder der Tierarzt bei der Untersuchung an dem Tag, nach dem Recht und den Berufsregeln des Ortes. Hier wird nichts verordnet.',
  'Questions: {name}, {phone}.': 'Fragen: {name}, {phone}.',
  '{dog}, order {order}, page {page} of {of}': '{dog}, Auftrag {order}, Seite {page} von {of}',
} as const;

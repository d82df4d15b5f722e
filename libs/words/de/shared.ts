/** Said on owners' pages and on those of a practice alike. */
export const shared = {
  Monday: 'Montag',
  Tuesday: 'Dienstag',
  Wednesday: 'Mittwoch',
  Thursday: 'Donnerstag',
  Friday: 'Freitag',
  Saturday: 'Samstag',
  Sunday: 'Sonntag',

  'In season now, or due in the next weeks?': 'Jetzt läufig, oder in den nächsten Wochen?',
  'Pregnant, or mated since the last season?': 'Trächtig, oder seit der letzten Läufigkeit gedeckt?',
  'Nursing pups?': 'Werden Welpen gesäugt?',
  'Ill, coughing or off food in the last two weeks?': 'In den letzten zwei Wochen krank, mit Husten oder ohne Appetit?',
  'Any medicine, drops or tablets now?': 'Zurzeit Medikamente, Tropfen oder Tabletten?',
  'Any operation on hips, legs or elbows before?': 'Früher eine Operation an Hüften, Beinen oder Ellbogen?',
} as const;

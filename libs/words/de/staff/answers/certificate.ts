/** What the check of a paper says of it; the lines that are printed are shown as they are printed. */
export const certificate = {
  'This paper is in force. Compare every line with the paper in your hand.': 'Dieses Papier gilt. Vergleichen Sie jede Zeile mit dem Papier in Ihrer Hand.',
  'This paper no longer stands: a newer reading has replaced it.': 'Dieses Papier gilt nicht mehr: Eine neuere Beurteilung hat es ersetzt.',
  'This paper no longer stands: it was withdrawn.': 'Dieses Papier gilt nicht mehr: Es wurde zurückgezogen.',
  'Certificate of a screening result': 'Bescheinigung eines Untersuchungsergebnisses',
  'It tells what was seen in these pictures on that day.': 'Es sagt, was an dem Tag auf diesen Bildern zu sehen war.',
  'It does not tell pain or lameness, later arthritis in this dog, or what its pups will have.':
    'Es sagt nichts über Schmerzen oder Lahmheit, über spätere Arthrose dieses Hundes, und nicht, was seine Welpen haben werden.',
  'Before the next sedation or anaesthesia tell the veterinarian about this one.':
    'Sagen Sie vor der nächsten Sedierung oder Narkose der Tierärztin oder dem Tierarzt, dass es diese gab.',
} as const;

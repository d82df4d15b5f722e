/** Images that fit no order. */
export const unmatched = {
  'Images without an order': 'Bilder ohne Auftrag',
  'They came from an X-ray machine, and their numbers lead to no order here. Nothing is lost: each waits until somebody has looked.':
    'Sie kamen von einem Röntgengerät, und ihre Nummern führen hier zu keinem Auftrag. Nichts ist verloren: Jedes wartet, bis jemand nachgesehen hat.',
  'the images': 'die Bilder',
  'No image waits': 'Kein Bild wartet',
  'An image that fits no order is listed here.': 'Ein Bild, das zu keinem Auftrag passt, steht hier.',
  'From {from}': 'Von {from}',
  'The image from {from}, {at}': 'Das Bild von {from}, {at}',
  'No picture of it can be shown here yet. It is kept whole.': 'Davon lässt sich hier noch kein Bild zeigen. Es ist vollständig aufbewahrt.',
  '{why} It says of itself:': '{why} Es sagt von sich:',
  Taken: 'Aufgenommen',
  'Nothing that names a dog.': 'Nichts, was einen Hund nennt.',
  'Say whose it is': 'Sagen, wessen Bild es ist',
  'Put it into this order': 'In diesen Auftrag legen',
  'It belongs to no order': 'Es gehört zu keinem Auftrag',
  'Set it aside': 'Zur Seite legen',
} as const;

/** Points on a film, as page and server speak of them alike: what is marked, and what cannot be measured. */
export const geometry = {
  'Nothing is marked yet. Set points on the picture first.': 'Noch ist nichts markiert. Setzen Sie zuerst Punkte auf das Bild.',
  '“{kind}” is not marked on this view. Use {kinds}.': '„{kind}“ wird auf dieser Aufnahme nicht markiert. Möglich sind {kinds}.',
  '“{kind}” is not marked on this view. Nothing is measured on it.': '„{kind}“ wird auf dieser Aufnahme nicht markiert. An ihr wird nichts gemessen.',
  '{mark}: say whether it is the dog’s left or right.': '{mark}: Sagen Sie, ob es links oder rechts am Hund ist.',
  '{mark} has no side. Leave the side out.': '{mark} hat keine Seite. Lassen Sie die Seite weg.',
  '{mark} is marked twice. Keep one.': '{mark} ist zweimal markiert. Behalten Sie eines.',
  '{mark}, {side, select, left {left} other {right}}': '{mark}, {side, select, left {links} other {rechts}}',
  '{mark}: needs {wanted} points and has {has}. Set or remove some.': '{mark}: braucht {wanted} Punkte und hat {has}. Setzen oder entfernen Sie welche.',
  '{from} to {to}': '{from} bis {to}',
  'Point {number} has no place: x is {x}, y is {y}. Set it again.': 'Punkt {number} hat keinen Ort: x ist {x}, y ist {y}. Setzen Sie ihn neu.',
  '{what}: point {number} at {x}, {y} lies outside the picture of {width} × {height}. Set it inside.': '{what}: Punkt {number} bei {x}, {y} liegt außerhalb des Bildes von {width} × {height}. Setzen Sie ihn hinein.',
  'The picture is said to be {width} × {height} pixels. Upload it again.': 'Das Bild soll {width} × {height} Pixel groß sein. Laden Sie es noch einmal hoch.',
  'The file says that its pixels are {column} × {row} mm, which cannot be. Ask for the file to be sent again, or measure on paper.':
    'Die Datei sagt, ihre Pixel seien {column} × {row} mm groß; das kann nicht sein. Lassen Sie die Datei noch einmal senden, oder messen Sie auf Papier.',
  '{what} lie on one another, so there is no line between them. Move one.': '{what} liegen aufeinander, darum gibt es keine Linie dazwischen. Verschieben Sie einen davon.',
  'The two points of the dorsal edge': 'Die zwei Punkte der hinteren Kante',
  'The centres of the two heads': 'Die Mittelpunkte der beiden Köpfe',
  'The centre of a head and the rim of its socket': 'Der Mittelpunkt eines Kopfes und der Rand seiner Pfanne',
  'The two ends of the thigh bone': 'Die zwei Enden des Oberschenkelknochens',
  'The two ends of the midline': 'Die zwei Enden der Mittellinie',
  'The two ends of the {side, select, left {left} other {right}} width lie on one another. Move one.': 'Die zwei Enden der {side, select, left {linken} other {rechten}} Breite liegen aufeinander. Verschieben Sie eines.',
  'The dorsal edge points straight at the other hip, so it has no side. Move one of its points.': 'Die hintere Kante zeigt genau auf die andere Hüfte, darum hat sie keine Seite. Verschieben Sie einen ihrer Punkte.',
  'The error of a point must be 0 or more, not {given}.': 'Der Fehler eines Punktes muss 0 oder mehr sein, nicht {given}.',
  'A circle needs three different points of its rim; there {different, plural, one {is #} other {are #}}. Set more.':
    'Ein Kreis braucht drei verschiedene Punkte seines Randes; es {different, plural, one {ist #} other {sind #}}. Setzen Sie mehr.',
  'The points lie on one straight line, so no circle goes through them. Move one along the rim.': 'Die Punkte liegen auf einer geraden Linie, darum geht kein Kreis durch sie. Verschieben Sie einen am Rand entlang.',
  'The points span so little of a rim that the circle would be {times} times as large as they reach. Set points further round the rim.':
    'Die Punkte umspannen so wenig von einem Rand, dass der Kreis {times}-mal so groß würde, wie sie reichen. Setzen Sie Punkte weiter herum auf den Rand.',
  'A centre or a radius is no number, so there is no index. Set the points again.': 'Ein Mittelpunkt oder ein Radius ist keine Zahl, darum gibt es keinen Index. Setzen Sie die Punkte neu.',
  'A circle has a radius of 0 or less, so there is no index. Set its points again.': 'Ein Kreis hat einen Radius von 0 oder weniger, darum gibt es keinen Index. Setzen Sie seine Punkte neu.',
  'The centres lie {apart} radii apart; above {most} the head would be wholly outside its place. Check that both circles belong to the same side.':
    'Die Mittelpunkte liegen {apart} Radien auseinander; über {most} läge der Kopf ganz außerhalb seines Platzes. Prüfen Sie, ob beide Kreise zu derselben Seite gehören.',

  'Side marker L lies on the dog’s left.': 'Das Seitenzeichen L liegt links am Hund.',
  'Side marker R lies on the dog’s right.': 'Das Seitenzeichen R liegt rechts am Hund.',
  'Side marker R lies on the side that is marked left. Either the sides were exchanged, or the picture is mirrored. Nothing can be said of it until the sides are known.':
    'Das Seitenzeichen R liegt auf der Seite, die links markiert ist. Entweder sind die Seiten vertauscht, oder das Bild ist gespiegelt. Bevor die Seiten klar sind, lässt sich nichts dazu sagen.',
  'Side marker L lies on the side that is marked right. Either the sides were exchanged, or the picture is mirrored. Nothing can be said of it until the sides are known.':
    'Das Seitenzeichen L liegt auf der Seite, die rechts markiert ist. Entweder sind die Seiten vertauscht, oder das Bild ist gespiegelt. Bevor die Seiten klar sind, lässt sich nichts dazu sagen.',
  'No side marker is set, so the sides rest on how the picture stands.': 'Es ist kein Seitenzeichen gesetzt, darum folgen die Seiten daraus, wie das Bild steht.',
  'The dog’s left is marked where its right lies on a view from below. Either the sides were exchanged, or the picture is mirrored or was taken from above. Look at the side marker and mark again.':
    'Links ist dort markiert, wo bei einer Aufnahme von unten rechts liegt. Entweder sind die Seiten vertauscht, oder das Bild ist gespiegelt oder von oben gemacht. Sehen Sie nach dem Seitenzeichen, und markieren Sie neu.',

  Head: 'Kopf',
  Socket: 'Pfanne',
  'Outer rim': 'Äußerer Rand',
  'Back edge': 'Hintere Kante',
  Opening: 'Öffnung',
  Wing: 'Schaufel',
  Thigh: 'Oberschenkel',
  Midline: 'Mittellinie',
  'Side marker': 'Seitenzeichen',
} as const;

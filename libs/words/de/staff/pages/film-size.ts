/** How large the pixels of a PNG or JPEG are: entered for a detector, said of a picture. */
export const filmSize = {
  Pixels: 'Pixel',
  'Said by {name}, {day}': 'Angabe von {name}, {day}',
  'Size not known': 'Größe nicht bekannt',
  'Enter the size': 'Größe eintragen',
  'Size of a pixel': 'Größe eines Pixels',
  'From one pixel to the next, both ways, such as 0.139. It stands in the detector’s manual or on its label; else ask the service engineer. Films exported as PNG or JPEG pixel for pixel then have a size. Leave it empty to take a size back; films that have it keep it.':
    'Von einem Pixel zum nächsten, in beiden Richtungen, etwa 0,139. Sie steht im Handbuch des Detektors oder auf seinem Schild; sonst weiß sie der Kundendienst. Als PNG oder JPEG Pixel für Pixel ausgegebene Bilder haben dann eine Größe. Lassen Sie das Feld leer, um eine Angabe zurückzunehmen; Bilder, die sie haben, behalten sie.',
  '{mm, number, ::.####} mm': '{mm, number, ::.####} mm',
  'A detector’s pixels are at least 0.02 mm. Their size stands in its manual or on its label; else ask the service engineer.':
    'Die Pixel eines Detektors sind mindestens 0,02 mm groß. Ihre Größe steht in seinem Handbuch oder auf seinem Schild; sonst weiß sie der Kundendienst.',
  'A detector’s pixels are at most 0.5 mm; 139 µm is written 0.139. Their size stands in its manual or on its label; else ask the service engineer.':
    'Die Pixel eines Detektors sind höchstens 0,5 mm groß; 139 µm schreibt man 0,139. Ihre Größe steht in seinem Handbuch oder auf seinem Schild; sonst weiß sie der Kundendienst.',
  'Size of its pixels': 'Größe seiner Pixel',
  'Not known': 'Nicht bekannt',
  'Exported pixel for pixel: {detector}': 'Pixel für Pixel ausgegeben: {detector}',
  'It holds only for a picture that was exported pixel for pixel: not cropped, not made larger or smaller, no photo of a screen. Not known, it leaves without a size (DICOM: Secondary Capture).':
    'Das gilt nur für ein Bild, das Pixel für Pixel ausgegeben wurde: nicht beschnitten, nicht vergrößert oder verkleinert, kein Foto eines Bildschirms. Nicht bekannt heißt, es geht ohne Größe hinaus (DICOM: Secondary Capture).',
  'How large its pixels are is not known, so this picture leaves without a size (DICOM: Secondary Capture). A practice manager enters the detector’s pixels under Practice, Equipment; or export the film as DICOM.':
    'Wie groß seine Pixel sind, ist nicht bekannt; darum geht dieses Bild ohne Größe hinaus (DICOM: Secondary Capture). Die Praxisleitung trägt die Pixel des Detektors unter Praxis, Geräte ein; oder geben Sie das Bild als DICOM aus.',
  'Which way it lies': 'Wie es liegt',
  'Say which way the picture lies.': 'Sagen Sie, wie das Bild liegt.',
  '{right} at the right edge, {lower} at the lower edge.': '{right} am rechten Rand, {lower} am unteren Rand.',
  'Pixels of {mm, number, ::.####} mm, as stated for {detector}; not measured.': 'Pixel von {mm, number, ::.####} mm, wie für {detector} angegeben; nicht gemessen.',
  'Without a size: it goes to a centre as a picture only (DICOM: Secondary Capture).': 'Ohne Größe: An eine Auswertungsstelle geht es nur als Bild (DICOM: Secondary Capture).',
  'If it was exported pixel for pixel, say so under “Size of a picture’s pixels”; else export the film as DICOM.':
    'Wurde es Pixel für Pixel ausgegeben, so sagen Sie das unter „Größe der Pixel eines Bildes“; sonst geben Sie das Bild als DICOM aus.',
} as const;

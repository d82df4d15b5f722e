import type { View } from './types.js';

/** One exposure of this view may serve a laxity study and a grading study. */
export const vdExtended: View = {
  code: 'vdExtended',
  label: 'Extended, from below',
  shortLabel: 'Extended',
  side: 'both',
  required: true,
  checklist: [
    'Dog on its back, both hind legs extended',
    'Thigh bones parallel to the spine, the table and each other',
    'Kneecaps centred over the thigh bones',
    'Pelvis level: both openings of the pelvis equally wide',
    'Whole pelvis down to the knees in the picture',
    'Side marker in the picture',
  ],
};

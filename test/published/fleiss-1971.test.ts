import { fleissKappa } from '#libs/science/agreement/fleiss-kappa';

// Fleiss, Psychol Bull 1971;76:378-382: 30 patients, 6 psychiatrists, 5 diagnoses. The counts are from memory; that all six
// published figures come out of them is what speaks for the memory.
const diagnoses = [
  [0, 0, 0, 6, 0], [0, 3, 0, 0, 3], [0, 1, 4, 0, 1], [0, 0, 0, 0, 6], [0, 3, 0, 3, 0], [2, 0, 4, 0, 0], [0, 0, 4, 0, 2], [2, 0, 3, 1, 0], [2, 0, 0, 4, 0], [0, 0, 0, 0, 6],
  [1, 0, 0, 5, 0], [1, 1, 0, 4, 0], [0, 3, 3, 0, 0], [1, 0, 0, 5, 0], [0, 2, 0, 3, 1], [0, 0, 5, 0, 1], [3, 0, 0, 1, 2], [5, 1, 0, 0, 0], [0, 2, 0, 4, 0], [1, 0, 2, 0, 3],
  [0, 0, 0, 0, 6], [0, 1, 0, 5, 0], [0, 2, 0, 1, 3], [2, 0, 0, 4, 0], [1, 0, 0, 4, 1], [0, 5, 0, 1, 0], [4, 0, 0, 0, 2], [0, 2, 0, 4, 0], [1, 0, 5, 0, 0], [0, 0, 0, 0, 6],
];

it('kappa .430245; by diagnosis .245 .245 .520 .471 .566', () => {
  const { films, readers, kappa, byGrade } = fleissKappa(diagnoses);
  expect([films, readers]).toEqual([30, 6]);
  expect(kappa).toBeCloseTo(0.430245, 6);
  expect(byGrade).toEqual([0.245, 0.245, 0.52, 0.471, 0.566].map((value) => expect.closeTo(value, 3)));
});

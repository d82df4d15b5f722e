import { norbergAngle } from '#libs/science/measurement/norberg-angle';

// Definition: Vet Comp Orthop Traumatol 2020. Heads at (100, 200) and (300, 200), y downward; values recomputed from it.
const [right, left] = [{ x: 100, y: 200 }, { x: 300, y: 200 }];

it.each([
  ['the rim further out', right, left, { x: 92, y: 171 }, 105.422161],
  ['the rim further out on the other side', left, right, { x: 306, y: 172 }, 102.094757],
  ['the rim straight above', right, left, { x: 100, y: 170 }, 90],
  ['the rim towards the midline', right, left, { x: 110, y: 172 }, 70.346176],
])('%s', (_, head, other, rim, degrees) => {
  expect(norbergAngle(head, other, rim)).toBeCloseTo(degrees, 6);
});

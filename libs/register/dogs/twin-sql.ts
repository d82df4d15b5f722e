const standing = (alias: string) => `${alias}.practice_id = $1::uuid AND NOT EXISTS (SELECT 1 FROM dog_merge m WHERE m.gone_id = ${alias}.id)`;

/** Pairs of dogs of one practice that look like one, each once, with why. $1 practice. */
export const TWIN_PAIRS = `SELECT a.id AS a, b.id AS b, max(x.why) AS why FROM dog a JOIN dog b ON a.id < b.id AND a.sex = b.sex JOIN LATERAL (
  SELECT 'number' AS why FROM dog_identifier i JOIN dog_identifier j ON j.value = i.value AND j.kind = i.kind WHERE i.dog_id = a.id AND j.dog_id = b.id AND i.kind <> 'none' AND i.value <> ''
  UNION ALL
  SELECT 'nameAndBirth' FROM dog_name n JOIN dog_name k ON lower(k.name) = lower(n.name) WHERE n.dog_id = a.id AND k.dog_id = b.id AND a.born_earliest <= b.born_latest AND b.born_earliest <= a.born_latest
) x ON true WHERE ${standing('a')} AND ${standing('b')} GROUP BY a.id, b.id`;

/** A dog with its dated names, numbers and people, assembled by the database. Expects the alias `d`. */
export const DOG = `jsonb_build_object(
  'id', d.id, 'animalId', d.animal_id, 'callName', d.call_name, 'breed', d.breed, 'sex', d.sex, 'neutered', d.neutered,
  'birth', jsonb_build_object('earliest', d.born_earliest, 'latest', d.born_latest, 'precision', d.born_precision), 'died', d.died,
  'sire', d.sire_name, 'dam', d.dam_name,
  'names', COALESCE((SELECT jsonb_agg(jsonb_build_object('name', n.name, 'from', n.valid_from) ORDER BY n.valid_from DESC) FROM dog_name n WHERE n.dog_id = d.id), '[]'),
  'identifiers', COALESCE((SELECT jsonb_agg(jsonb_build_object('kind', i.kind, 'value', i.value, 'how', i.how, 'from', i.valid_from, 'until', i.valid_until) ORDER BY i.valid_from DESC) FROM dog_identifier i WHERE i.dog_id = d.id), '[]'),
  'merged', COALESCE((SELECT jsonb_agg(jsonb_build_object('animalId', m.animal_id, 'why', m.why, 'by', m.by_name, 'at', to_char(m.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"')) ORDER BY m.at) FROM dog_merge m WHERE m.kept_id = d.id), '[]'),
  'studBook', COALESCE((SELECT jsonb_agg(jsonb_build_object('book', b.book, 'number', b.number)) FROM stud_book_number b WHERE b.dog_id = d.id), '[]'),
  'people', COALESCE((SELECT jsonb_agg(jsonb_build_object('role', r.role, 'from', r.valid_from, 'until', r.valid_until,
      'person', jsonb_build_object('id', p.id, 'name', p.name, 'latinName', p.latin_name, 'email', p.email, 'phone', p.phone, 'address', p.address, 'channel', p.channel, 'language', p.language)) ORDER BY r.valid_from, r.role)
    FROM dog_role r JOIN person p ON p.id = r.person_id WHERE r.dog_id = d.id), '[]'))`;

/** A dog's people, each in one role. Expects the alias `d`. */
export const PEOPLE = `COALESCE((SELECT jsonb_agg(jsonb_build_object('role', r.role, 'id', r.id, 'person', p.id, 'dog', r.dog_id, 'from', r.valid_from, 'until', r.valid_until, 'name', p.name, 'email', p.email, 'phone', p.phone, 'address', p.address, 'erased', p.erased_at IS NOT NULL) ORDER BY r.valid_from, r.role, r.id)
  FROM dog_role r JOIN person p ON p.id = r.person_id WHERE r.dog_id = d.id), '[]')`;

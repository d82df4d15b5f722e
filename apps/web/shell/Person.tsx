import { useNavigate } from '@tanstack/react-router';
import type { Me } from '#libs/contracts/session';
import { useSignOut } from '../api/session.js';
import { Button } from '../design/Button.js';
import { roleWords } from './role-words.js';

export function Person({ me }: { me: Me }) {
  const signOut = useSignOut();
  const navigate = useNavigate();
  return (
    <div className="who">
      {me.name}
      <br />
      <span className="quiet roles">{me.roles.map((r) => roleWords[r]).join(', ')} </span>
      <Button onPress={() => signOut.mutate(undefined, { onSuccess: () => void navigate({ to: '/sign-in', search: {} }) })}>Sign out</Button>
    </div>
  );
}

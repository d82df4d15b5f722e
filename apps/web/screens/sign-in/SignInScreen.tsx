import { Navigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { useFirstRunNeeded, useMeQuery, useSignIn } from '../../api/session.js';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { Brand } from '../../shell/Brand.js';
import { homeOf } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { DemoPeople } from './DemoPeople.js';

export function SignInScreen() {
  const { then } = useSearch({ from: '/sign-in' });
  const { data: me } = useMeQuery();
  const firstRun = useFirstRunNeeded();
  const signIn = useSignIn();
  const [email, setEmail] = useState<string>();
  const [password, setPassword] = useState<string>();
  const [missing, setMissing] = useState<{ email?: string; password?: string }>({});

  if (firstRun.data?.needed) return <Navigate to="/first-run" replace />;
  // `then` came with the address: only a page of this server may follow.
  if (me) return <Navigate to={then && /^\/(?!\/)/.test(then) ? then : homeOf(me)} replace />;

  const submit = (e: React.FormEvent<HTMLFormElement>) => {
    e.preventDefault();
    setMissing({ ...(!email && { email: t('Your mail address is needed.') }), ...(!password && { password: t('Your password is needed.') }) });
    if (email && password) signIn.mutate({ email, password });
    else e.currentTarget.querySelector<HTMLInputElement>(email ? '[type=password]' : '[type=email]')?.focus();
  };

  return (
    <>
      <header>
        <div className="strip">
          <Brand house={null} />
        </div>
      </header>
      <main className="bare stack">
        <h1 className="vh">Cotyla</h1>
        <Sheet title={t('Sign in')}>
          <form className="form" noValidate onSubmit={submit}>
            <ErrorBar error={signIn.error} />
            <TextField label={t('Mail address')} type="email" autoComplete="username" value={email} onChange={setEmail} error={missing.email} />
            <TextField label={t('Password')} type="password" autoComplete="current-password" value={password} onChange={setPassword} error={missing.password} />
            <Button type="submit" kind="ink">
              {t('Sign in')}
            </Button>
          </form>
        </Sheet>
        <DemoPeople onPick={(person) => signIn.mutate(person)} />
      </main>
    </>
  );
}

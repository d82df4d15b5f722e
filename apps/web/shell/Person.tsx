import { Link, useNavigate } from '@tanstack/react-router';
import type { Me } from '#libs/contracts/session';
import { languageCodes, languages } from '#libs/words/languages';
import { useChooseLanguage, useSignOut } from '../api/session.js';
import { Button, buttonClass } from '../design/Button.js';
import { t } from '../words/t.js';
import { roleWords } from './role-words.js';

export function Person({ me }: { me: Me }) {
  const signOut = useSignOut();
  const choose = useChooseLanguage(me);
  const navigate = useNavigate();
  return (
    <div className="who">
      {me.name}
      <br />
      <span className="quiet roles">{me.roles.map((r) => t(roleWords[r])).join(', ')} </span>
      {me.kind !== 'ownerLink' && me.kind !== 'readerLink' && <Link to="/help" className={buttonClass()}>{t('Help')}</Link>}
      {me.kind !== 'ownerLink' && languageCodes.filter((code) => code !== me.language).map((code) => (
        <span key={code} lang={code}>
          <Button onPress={() => choose.mutate({ language: code })}>{languages[code].name}</Button>
        </span>
      ))}
      <Button onPress={() => signOut.mutate(undefined, { onSuccess: () => void navigate({ to: '/sign-in', search: {} }) })}>{t('Sign out')}</Button>
    </div>
  );
}

import type { SignIn } from '#libs/contracts/session';
import { useDemoSignIns } from '../../api/session.js';
import { Button } from '../../design/Button.js';
import { Sheet } from '../../design/Sheet.js';
import { roleWords } from '../../shell/role-words.js';
import { t } from '../../words/t.js';

/** Only a demo server answers with people to sign in as. */
export function DemoPeople({ onPick }: { onPick: (person: SignIn) => void }) {
  const { data } = useDemoSignIns();
  if (!data?.length) return null;
  const homes = [...new Set(data.map((p) => p.home))];
  return (
    <Sheet title={t('This is a demo')} beside={t('invented people and dogs; choose who you are')}>
      <div className="stack">
        {homes.map((home) => (
          <div key={home}>
            <h3>{home}</h3>
            <ul className="people">
              {data
                .filter((p) => p.home === home)
                .map((p) => (
                  <li key={p.email}>
                    <Button onPress={() => onPick({ email: p.email, password: p.password })}>
                      <span>
                        {p.name} <span className="label">{p.roles.map((r) => t(roleWords[r])).join(', ')}</span>
                      </span>
                    </Button>
                  </li>
                ))}
            </ul>
          </div>
        ))}
      </div>
    </Sheet>
  );
}

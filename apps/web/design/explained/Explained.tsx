import { useState } from 'react';
import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components';
import { useStudies } from './use-studies.js';
import './explained.css';
import { t } from '../../words/t.js';

/** A small question mark beside a measure: what it is, how far two readings differ, and where that comes from. */
export function Explained({ study: code }: { study: string }) {
  const [open, setOpen] = useState(false);
  const { data } = useStudies(open);
  const study = data?.find((s) => s.code === code);
  return (
    <DialogTrigger isOpen={open} onOpenChange={setOpen}>
      <Button className="explain" aria-label={t('What does this number mean?')}>?</Button>
      <Popover className="popover explained">
        <Dialog aria-label={study ? study.measure.name : t('What this number means')}>
          {study ? (
            <>
              <p><b>{study.measure.name}.</b> {study.measure.says}</p>
              <p><b>{t('How far two readings differ.')}</b> {study.doubt}</p>
              <p className="small quiet">{study.sources[0]?.what}: {study.sources[0]?.citation}</p>
              <p className="small"><a href={`/help#studies`}>{t('All about this study')}</a></p>
            </>
          ) : (
            <p>{data ? t('This study is of an earlier time and is not explained here.') : t('Looking it up …')}</p>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

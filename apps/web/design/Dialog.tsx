import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Button } from './Button.js';
import { t } from '../words/t.js';

export function Dialog({ title, isOpen, onClose, wide, children }: { title: string; isOpen: boolean; onClose: () => void; wide?: boolean; children: ReactNode }) {
  return (
    <ModalOverlay className="overlay" isOpen={isOpen} onOpenChange={(open) => !open && onClose()} isDismissable={false}>
      <Modal className={wide ? 'modal modal-wide' : 'modal'}>
        <AriaDialog className="dialog">
          <div className="dialog-head">
            <Heading slot="title">{title}</Heading>
            <Button onPress={onClose}>{t('Close')}</Button>
          </div>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}

import type { LogTrouble } from '../state/storage-state';
import { Action } from './action';
import { StepScreen } from './step-screen';

export interface TroubleScreenProps {
  readonly trouble: LogTrouble;
  readonly onAgain: () => void;
}

/** Nothing can be kept here, so nothing begins; for the grown-up who comes to look. */
export function TroubleScreen({ trouble, onAgain }: TroubleScreenProps) {
  return (
    <StepScreen
      title="Nothing can be kept here yet"
      name="trouble-screen"
      actions={<Action onPress={onAgain}>Try again</Action>}
    >
      <p role="alert">{sentences[trouble.what]}</p>
    </StepScreen>
  );
}

const sentences: Readonly<Record<LogTrouble['what'], string>> = {
  refused:
    'This browser stores nothing for this page, as in a private window. Open it in an ordinary window; nothing kept there is lost.',
  full: 'The device has no room left. Make some room, then try again. What was kept before is still there.',
  later:
    'A newer version has been at work on this device. Close every window of this page and open it again. Nothing is lost.',
  blocked: 'An older version is open in another window. Close that window, then try again.',
  gone: 'The browser has closed its storage. Close this window and open it again.',
  unknown:
    'The browser could not open its storage. Close this window and open it again; nothing kept was changed.',
};

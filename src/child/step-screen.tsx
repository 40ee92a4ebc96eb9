import type { ComponentChildren } from 'preact';
import { NotMe } from './not-me';
import { Shell } from './shell';
import './step-screen.css';

export interface StepScreenProps {
  readonly title: string;
  /** A picture, told in the title, so hidden from a screen reader unless it labels itself. */
  readonly children: ComponentChildren;
  readonly actions: ComponentChildren;
  readonly name?: string;
  readonly edge?: number;
  readonly onGrownUps?: () => void;
  readonly isKnotNamed?: boolean;
  readonly onNotMe?: (() => void) | undefined;
  readonly isNotMeNamed?: boolean;
}

/** Most of the child's screens: a few words, a picture, what to press. */
export function StepScreen({
  title,
  children,
  actions,
  name = '',
  edge,
  onGrownUps,
  isKnotNamed = false,
  onNotMe,
  isNotMeNamed = false,
}: StepScreenProps) {
  return (
    <Shell
      name={`step-screen ${name}`}
      isKnotNamed={isKnotNamed}
      {...(edge === undefined ? {} : { edge })}
      {...(onGrownUps ? { onGrownUps } : {})}
    >
      <div class="step">
        <h1 id="step-title">{title}</h1>
        <div class="picture">{children}</div>
        <div class="actions">{actions}</div>
        {onNotMe && <NotMe onPress={onNotMe} isNamed={isNotMeNamed} />}
      </div>
    </Shell>
  );
}

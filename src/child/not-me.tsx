import { words } from './words';

export interface NotMeProps {
  readonly onPress: () => void;
  /** Its words are printed where they are not too many for the screen; the drawing is always there. */
  readonly isNamed: boolean;
}

/** The small way back to *Whose cloth?*, drawn as its stack of folded cloths. */
export function NotMe({ onPress, isNamed }: NotMeProps) {
  return (
    <button
      type="button"
      class="not-me"
      {...(isNamed ? {} : { 'aria-label': words.notMe })}
      onClick={onPress}
    >
      <svg viewBox="0 0 44 32" aria-hidden="true">
        <path d="M38 3H10Q5 3 5 7T10 11H38M38 7H12" />
        <path d="M41 12H13Q8 12 8 16T13 20H41M41 16H15" />
        <path d="M37 21H9Q4 21 4 25T9 29H37M37 25H11" />
      </svg>
      {isNamed && <span>{words.notMe}</span>}
    </button>
  );
}

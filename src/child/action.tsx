import type { ComponentChildren } from 'preact';

export interface ActionProps {
  readonly onPress: () => void;
  readonly children: ComponentChildren;
  /** Beside the next thing to do, or instead of it. */
  readonly plain?: boolean;
  /** Leads away from the child's screens, so that the page needn't fill the screen. */
  readonly leaves?: boolean;
}

/** What a child may press under a picture: big is the next thing to do. */
export function Action({ onPress, children, plain = false, leaves = false }: ActionProps) {
  return (
    <button
      type="button"
      class={plain ? 'plain' : 'big'}
      {...(leaves ? { 'data-leaves': true } : {})}
      onClick={onPress}
    >
      {children}
    </button>
  );
}

/**
 * Keeps the focus where something was pressed. Where the pressed button is gone, the nearest part around it that is
 * still there and carries `data-holds` takes the focus: on what the first of its selectors finds, or else on its first
 * control. Returns what ends the watch.
 */
export function holdFocus(root: HTMLElement): () => void {
  let last: HTMLElement | null = null;
  let around: readonly HTMLElement[] = [];
  const remember = ({ target }: FocusEvent) => {
    last = target instanceof HTMLElement ? target : null;
    around = last ? holdersOf(last, root) : [];
  };
  const look = () => {
    // A focus given up by a tap beside everything is the parent's own doing.
    if (!last || last.isConnected) return;
    const at = document.activeElement;
    last = null;
    if (at && at !== document.body) return;
    const holder = around.find((part) => root.contains(part));
    if (holder) landingIn(holder)?.focus();
  };
  const watch = new MutationObserver(look);
  root.addEventListener('focusin', remember);
  watch.observe(root, { childList: true, subtree: true });
  return () => {
    root.removeEventListener('focusin', remember);
    watch.disconnect();
  };
}

// Read while all stand: once a row is gone, nothing leads from it to its table.
function holdersOf(target: HTMLElement, root: HTMLElement): readonly HTMLElement[] {
  const parts: HTMLElement[] = [];
  for (let part = target.parentElement; part && root.contains(part); part = part.parentElement) {
    if (part.dataset['holds'] !== undefined) parts.push(part);
  }
  return parts;
}

function landingIn(holder: HTMLElement): HTMLElement | null {
  for (const wanted of (holder.dataset['holds'] ?? '').split(',').filter(Boolean)) {
    const found = holder.querySelector<HTMLElement>(wanted);
    if (found) return found;
  }
  return holder.querySelector<HTMLElement>('button, a[href], input, select, summary, [tabindex]');
}

/** Keeps a stray gesture from breaking a sheet: menus, drags, selections, pinches. Gives the way to stop. */
export function guardPage(page: Document): () => void {
  const refuse = (event: Event) => event.preventDefault();
  // `gesturestart` is one browser family's pinch, which it lets through whatever `touch-action` says.
  const refused = ['contextmenu', 'dragstart', 'selectstart', 'gesturestart', 'dblclick'];
  for (const name of refused) page.addEventListener(name, refuse);
  // A wheel with Ctrl held is a pinch on a touch pad.
  const refuseZoom = (event: WheelEvent) => {
    if (event.ctrlKey) event.preventDefault();
  };
  page.addEventListener('wheel', refuseZoom, { passive: false });
  return () => {
    for (const name of refused) page.removeEventListener(name, refuse);
    page.removeEventListener('wheel', refuseZoom);
  };
}

/**
 * Asks for the full screen at the first gesture, as browsers want it; gives the way to stop asking. A press on what
 * is marked `data-leaves` leads to the grown-ups' side and asks for nothing.
 */
export function fillScreen(page: Document): () => void {
  const ask = ({ target }: Event) => {
    if (target instanceof Element && target.closest('[data-leaves]')) return;
    stop();
    if (!page.fullscreenElement)
      page.documentElement.requestFullscreen?.({ navigationUI: 'hide' }).catch(() => undefined);
  };
  const stop = () => {
    page.removeEventListener('pointerup', ask);
    page.removeEventListener('keydown', ask);
  };
  page.addEventListener('pointerup', ask);
  page.addEventListener('keydown', ask);
  return stop;
}

/** Marks the page while it is worked by keys, so that only then the focus is drawn; gives the way to stop. */
export function watchHands(page: Document): () => void {
  const byKeys = () => page.documentElement.setAttribute('data-by-keys', '');
  const byFinger = () => page.documentElement.removeAttribute('data-by-keys');
  page.addEventListener('keydown', byKeys, true);
  page.addEventListener('pointerdown', byFinger, true);
  return () => {
    page.removeEventListener('keydown', byKeys, true);
    page.removeEventListener('pointerdown', byFinger, true);
  };
}

/** Keeps the screen awake while the page is seen, where that is granted; gives the way to let it sleep. */
export function keepAwake(page: Document): () => void {
  let lock: WakeLockSentinel | null = null;
  let isWanted = true;
  const ask = async () => {
    if (!isWanted || page.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    const granted = await navigator.wakeLock.request('screen').catch(() => null);
    if (isWanted) lock = granted;
    else await granted?.release();
  };
  // The browser takes the lock back whenever the page is hidden.
  page.addEventListener('visibilitychange', ask);
  void ask();
  return () => {
    isWanted = false;
    page.removeEventListener('visibilitychange', ask);
    void lock?.release();
  };
}

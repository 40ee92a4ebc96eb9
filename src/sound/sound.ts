import type { Howl } from 'howler';
import mp3 from '../../assets/sounds/sounds.mp3';
import webm from '../../assets/sounds/sounds.webm';
import sprite from '../../assets/sounds/sprite.json';

/** What can be heard. There is none for a wrong answer. */
export type SoundName = keyof typeof sprite;

let howl: Promise<Howl | null> | null = null;
let isMuted = false;

/** Fetches player and sounds once the browser is idle; safe to call again. */
export function loadSoundsWhenIdle(): void {
  if ('requestIdleCallback' in window) window.requestIdleCallback(() => void loadHowl());
  else setTimeout(() => void loadHowl(), 1_000);
}

/** Plays at once if the sounds are there. A sound that would come late is left out: a bell must not lie. */
export function play(name: SoundName): void {
  if (isMuted) return;
  const askedAt = performance.now();
  void loadHowl().then((ready) => {
    if (!isMuted && performance.now() - askedAt < 150) ready?.play(name);
  });
}

/** One switch turns all off; a sound under way falls silent. */
export function setMuted(muted: boolean): void {
  isMuted = muted;
  if (muted) void howl?.then((ready) => ready?.stop());
}

function loadHowl(): Promise<Howl | null> {
  howl ??= importHowl().catch(() => {
    // Offline before the first idle moment: silence now, and another try at the next sound.
    howl = null;
    return null;
  });
  return howl;
}

async function importHowl(): Promise<Howl> {
  const { Howl } = await import('howler');
  const regions = Object.fromEntries(
    Object.entries(sprite).map(([name, [from = 0, length = 0]]): [string, [number, number]] => [
      name,
      [from, length],
    ]),
  );
  return new Promise((resolve, reject) => {
    const made: Howl = new Howl({
      src: [webm, mp3],
      sprite: regions,
      volume: 0.6,
      onload: () => resolve(made),
      onloaderror: (_id, error) => reject(error),
    });
  });
}

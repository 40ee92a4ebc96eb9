import { afterEach, describe, expect, it, vi } from 'vitest';
import mp3 from '../../assets/sounds/sounds.mp3';
import webm from '../../assets/sounds/sounds.webm';
import sprite from '../../assets/sounds/sprite.json';
import { loadSoundsWhenIdle, play, setMuted } from '../../src/sound/sound';

const { Howl } = await import('howler');
const played = vi.spyOn(Howl.prototype, 'play').mockReturnValue(1);

afterEach(() => {
  played.mockClear();
  setMuted(false);
});

async function decode(address: string): Promise<AudioBuffer> {
  const bytes = await (await fetch(address)).arrayBuffer();
  return new OfflineAudioContext(1, 1, 48_000).decodeAudioData(bytes);
}

/** Loudest sample, 0 to 1, between two moments in ms. */
function loudest(sound: AudioBuffer, fromMs: number, toMs: number): number {
  const [from, to] = [fromMs, toMs].map((ms) => Math.round((ms / 1000) * sound.sampleRate));
  return sound
    .getChannelData(0)
    .slice(from, to)
    .reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
}

describe('the sounds', () => {
  it('are start, bell, finished and key: none for a wrong answer', () => {
    expect(Object.keys(sprite)).toEqual(['start', 'bell', 'finished', 'key']);
  });

  it.each([
    ['webm', webm],
    ['mp3', mp3],
  ])('lie where the table says in %s, soft, with silence between', async (_format, address) => {
    const sound = await decode(address);
    for (const [name, [from = 0, length = 0]] of Object.entries(sprite)) {
      expect(loudest(sound, from, from + length), name).toBeGreaterThan(0.1);
      expect(loudest(sound, from, from + length), name).toBeLessThan(0.9);
      expect(loudest(sound, from + length + 60, from + length + 190), `after ${name}`).toBeLessThan(0.01);
    }
  });

  it('are played when loaded, and not when muted', async () => {
    loadSoundsWhenIdle();
    await vi.waitFor(() => {
      play('start');
      expect(played).toHaveBeenCalledWith('start');
    });
    played.mockClear();
    setMuted(true);
    play('bell');
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(played).not.toHaveBeenCalled();
  });
});

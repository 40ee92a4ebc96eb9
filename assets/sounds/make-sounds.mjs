// Makes the app's sounds from nothing: struck wooden bars, added up from their partials. Needs ffmpeg.
// Writes one sprite in two formats, bit for bit the same at every run, and the table of what lies where in it.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const RATE = 48_000;
const GAP_S = 0.25;

// Partials of a free bar whose middle is thinned until the second is two octaves up, as on a marimba.
const PARTIALS = [
  { ratio: 1, level: 1, decayS: 1 },
  { ratio: 3.98, level: 0.22, decayS: 0.28 },
  { ratio: 9.7, level: 0.07, decayS: 0.1 },
];

/** One struck bar: `atS` and `ringS` in seconds, `level` 0 to 1. */
function strike(into, { atS, hz, level, ringS }) {
  const first = Math.round(atS * RATE);
  const noise = makeNoise(Math.round(hz));
  for (let i = 0; first + i < into.length; i += 1) {
    const t = i / RATE;
    // 4 ms of rise: a felted mallet, no click.
    const rise = Math.min(1, t / 0.004);
    let sum = 0;
    for (const { ratio, level: share, decayS } of PARTIALS) {
      sum += share * Math.sin(2 * Math.PI * hz * ratio * t) * Math.exp(-t / (ringS * decayS));
    }
    const thud = noise() * 0.12 * Math.exp(-t / 0.006);
    into[first + i] += level * rise * (sum + thud);
  }
}

/** The same noise at every run, smoothed so that it thuds and doesn't hiss. */
function makeNoise(seed) {
  let state = seed >>> 0 || 1;
  let smooth = 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    smooth += 0.15 * (state / 2 ** 31 - 1 - smooth);
    return smooth * 3;
  };
}

const sounds = {
  start: { lengthS: 0.7, strikes: [bar(0, 392, 0.4, 0.12), bar(0.14, 523.25, 0.42, 0.16)] },
  bell: { lengthS: 1.3, strikes: [bar(0, 349.23, 0.5, 0.3), bar(0.012, 698.46, 0.12, 0.2)] },
  finished: {
    lengthS: 1.6,
    strikes: [
      bar(0, 392, 0.34, 0.16),
      bar(0.16, 493.88, 0.36, 0.18),
      bar(0.32, 587.33, 0.38, 0.2),
      bar(0.52, 783.99, 0.34, 0.3),
    ],
  },
  key: { lengthS: 0.12, strikes: [bar(0, 220, 0.3, 0.018)] },
};

function bar(atS, hz, level, ringS) {
  return { atS, hz, level, ringS };
}

const parts = [];
const table = {};
let atS = 0;
for (const [name, { lengthS, strikes }] of Object.entries(sounds)) {
  const part = new Float64Array(Math.round(lengthS * RATE));
  for (const one of strikes) strike(part, one);
  // The last 40 ms fade to silence, so that no cut is heard.
  const fade = Math.round(0.04 * RATE);
  for (let i = 0; i < fade; i += 1) part[part.length - 1 - i] *= i / fade;
  table[name] = [Math.round(atS * 1000), Math.round(lengthS * 1000)];
  parts.push(part, new Float64Array(Math.round(GAP_S * RATE)));
  atS += lengthS + GAP_S;
}

const samples = Int16Array.from(
  parts.flatMap((part) => [...part]),
  (value) => Math.round(Math.max(-1, Math.min(1, value)) * 32_000),
);

function makeWav(data) {
  const head = Buffer.alloc(44);
  head.write('RIFF', 0);
  head.writeUInt32LE(36 + data.byteLength, 4);
  head.write('WAVEfmt ', 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(RATE, 24);
  head.writeUInt32LE(RATE * 2, 28);
  head.writeUInt16LE(2, 32);
  head.writeUInt16LE(16, 34);
  head.write('data', 36);
  head.writeUInt32LE(data.byteLength, 40);
  return Buffer.concat([head, Buffer.from(data.buffer)]);
}

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'sounds-'));
const wav = join(scratch, 'sounds.wav');
writeFileSync(wav, makeWav(samples));
const exact = ['-fflags', '+bitexact', '-flags:a', '+bitexact', '-map_metadata', '-1'];
const encode = (...rest) =>
  execFileSync('ffmpeg', ['-y', '-loglevel', 'error', '-i', wav, ...exact, ...rest], { stdio: 'inherit' });
encode('-c:a', 'libopus', '-b:a', '40k', here('sounds.webm'));
encode('-c:a', 'libmp3lame', '-b:a', '48k', '-write_xing', '0', here('sounds.mp3'));
writeFileSync(here('sprite.json'), `${JSON.stringify(table)}\n`);
rmSync(scratch, { recursive: true });

import { test } from 'vitest';
import { liveLives } from './life';

const runs = Number(process.env['LIVES'] ?? 10_000);

test(`${runs} random lives agree with a simple model`, () => {
  liveLives(runs, Number(process.env['SEED'] ?? 20_260_301));
});

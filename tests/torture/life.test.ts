import { test } from 'vitest';
import { liveLives } from './life';

test('log, plan and sitting agree with a simple model over random lives', () => {
  liveLives(30);
}, 60_000);

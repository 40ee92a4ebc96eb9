import { vi } from 'vitest';

/** Waits for a check to hold, long enough for a machine that is busy with other tests. */
export function until(check: () => void): Promise<void> {
  return vi.waitFor(check, { timeout: 8000 });
}

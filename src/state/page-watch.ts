import type { AwayReason } from '../core/record/sat';

/** Tells when the page goes out of sight or is frozen, and when it is seen again; gives what ends the watch. */
export function watchPage(page: Document, left: (why: AwayReason) => void, seen: () => void): () => void {
  const turned = () => (page.visibilityState === 'hidden' ? left('hidden') : seen());
  const frozen = () => left('asleep');
  page.addEventListener('visibilitychange', turned);
  page.addEventListener('freeze', frozen);
  return () => {
    page.removeEventListener('visibilitychange', turned);
    page.removeEventListener('freeze', frozen);
  };
}

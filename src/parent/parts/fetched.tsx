import { useSignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';
import { partWords } from './words';

export interface FetchedProps<P extends object> {
  /** Its identity must hold from one render to the next. */
  readonly fetch: () => Promise<FunctionComponent<P>>;
  readonly props: P;
}

/** A page whose code is fetched when it is turned to. */
export function Fetched<P extends object>({ fetch, props }: FetchedProps<P>) {
  const page = useSignal<{ readonly Body: FunctionComponent<P> } | 'failed' | null>(null);
  useEffect(() => {
    fetch().then(
      (Body) => {
        page.value = { Body };
      },
      () => {
        page.value = 'failed';
      },
    );
  }, [fetch]);
  if (page.value === null) return <p role="status">{partWords.fetching}</p>;
  if (page.value === 'failed') return <p role="alert">{partWords.notFetched}</p>;
  return <page.value.Body {...props} />;
}

import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** A form whose first faulty field takes the focus when it is asked to look, once the fault is on the page. */
export function useFaultFocus() {
  const form = useRef<HTMLFormElement>(null);
  const looks = useSignal(0);
  const times = looks.value;
  useLayoutEffect(() => {
    if (times > 0) form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [times]);
  return {
    form,
    lookAtFault: () => {
      looks.value += 1;
    },
  };
}

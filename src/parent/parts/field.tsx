import type { Signal } from '@preact/signals';
import { useId } from 'preact/hooks';

export interface FieldProps {
  readonly label: string;
  readonly value: Signal<string>;
  readonly hint?: string | undefined;
  /** A plain sentence; the field is marked as wrong while there is one. */
  readonly fault?: string | null | undefined;
  readonly unit?: string;
  readonly type?: 'text' | 'password';
  readonly digits?: boolean;
  readonly autoComplete?: string;
  readonly name?: string;
  readonly wide?: boolean;
}

/** One line of text with its label, a hint and what is wrong with it. */
export function Field(props: FieldProps) {
  const id = useId();
  const { fault, hint } = props;
  const told = [hint ? `${id}-hint` : '', fault ? `${id}-fault` : ''].filter(Boolean).join(' ');
  const line = {
    id,
    value: props.value,
    inputMode: props.digits ? ('numeric' as const) : ('text' as const),
    autocomplete: props.autoComplete ?? 'off',
    onInput: (event: { readonly currentTarget: HTMLInputElement }) => {
      props.value.value = event.currentTarget.value;
    },
    ...(props.name ? { name: props.name } : {}),
    ...(fault ? { 'aria-invalid': 'true' as const } : {}),
    ...(told ? { 'aria-describedby': told } : {}),
  };
  return (
    <div class={props.wide ? 'field field-wide' : 'field'}>
      <label for={id}>{props.label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <span class="field-line">
        {props.type === 'password' ? <input type="password" {...line} /> : <input type="text" {...line} />}
        {props.unit && <span class="unit">{props.unit}</span>}
      </span>
      {fault && (
        <p class="fault" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </div>
  );
}

import { signal } from '@preact/signals';
import { render } from 'preact';
import { askedNth, digitsAsked } from '../asked';

// The least a page of cards can be: one card, one text for the digits, nothing kept.
const nth = signal(0);
const entry = signal('');

function Floor() {
  const at = nth.value;
  return (
    <main class="card">
      <p key={at} class="fact" id={`card-${at}`} style={{ fontSize: '96px' }}>
        {askedNth(at)}
      </p>
      <output style={{ fontSize: '96px' }}>{entry}</output>
    </main>
  );
}

document.addEventListener('keydown', ({ key }) => {
  if (!/^\d$/.test(key)) return;
  entry.value += key;
  if (entry.value.length < digitsAsked) return;
  entry.value = '';
  nth.value += 1;
});

const root = document.getElementById('app');
if (root) render(<Floor />, root);
if ('serviceWorker' in navigator && !import.meta.env.DEV)
  void navigator.serviceWorker.register('./service-worker.js');

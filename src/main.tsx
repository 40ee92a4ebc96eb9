import './first.css';
import { render } from 'preact';
import { isSecure, showInsecurePage } from './worker/insecure-page';
import { registerWorker } from './worker/register';

const root = document.getElementById('app');
if (root && isSecure()) {
  render(<h1>Sumstitch</h1>, root);
  void registerWorker({ onControlled: () => undefined, onWaiting: () => undefined });
} else if (root) {
  showInsecurePage(root);
}

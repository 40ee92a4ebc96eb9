import type { Sentence } from '../../readings/sentences/sentence';
import type { SaidText } from './said-text';

export function say(sentence: Sentence): SaidText {
  return { text: JSON.stringify(sentence).slice(0, 300), how: ['one', 'two'] };
}

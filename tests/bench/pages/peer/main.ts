import htmlKeyboardResponse from '@jspsych/plugin-html-keyboard-response';
import { initJsPsych } from 'jspsych';
import { askedNth } from '../asked';

declare global {
  /** The response times told so far, ms. */
  var told: number[];
}

globalThis.told = [];
const many = 2000;
const psych = initJsPsych({
  on_trial_finish: ({ rt }: { readonly rt: number }) => {
    globalThis.told.push(rt);
  },
});

// One digit ends a trial: the library's way of taking an answer.
void psych.run(
  Array.from({ length: many }, (_, nth) => ({
    type: htmlKeyboardResponse,
    stimulus: `<div class="card"><p class="fact" id="card-${nth}">${askedNth(nth)}</p></div>`,
    choices: [...'0123456789'],
  })),
);

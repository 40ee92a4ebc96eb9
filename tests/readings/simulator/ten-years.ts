import type { Sat } from '../../../src/core/record/sat';
import { teachingSets } from '../../../src/core/set/teaching-sets';
import { makeChance } from './chance';
import { calmChild, type MadeChild } from './made-child';
import { copyPlan, sheetPlan } from './run';
import { scriptOf } from './script';
import { sitFast } from './sit-fast';

const schoolDays = 180;
const daysOnASet = 30;

/** A made child's sheets of so many years, 180 a year, a new set every six weeks, a round of copying each month. */
export function yearsOf(
  seed: number,
  years: number,
): { readonly made: MadeChild; readonly sats: readonly Sat[] } {
  const chance = makeChance(seed);
  const made = calmChild(chance);
  const sets = teachingSets.filter(({ kind, reach }) => kind === 'group' && reach === 9);
  const met = new Map<string, number>();
  const sats: Sat[] = [];
  let nth = 0;
  const sit = (plan: Parameters<typeof sitFast>[0], day: string) => {
    sats.push({ ...sitFast(plan, scriptOf(made, plan, met, chance), { day, nth }), id: `s${seed}-${nth}` });
    nth += 1;
  };
  for (let at = 0; at < years * schoolDays; at += 1) {
    const day = dayOf(at);
    if (at % 20 === 0) sit(copyPlan, day);
    const set = sets[Math.floor(at / daysOnASet) % sets.length];
    const setFacts = set?.facts ?? [];
    const timed = at % daysOnASet > 8 && at % 2 === 0;
    const plan = sheetPlan({ ...made, set: set?.id ?? '', setFacts }, timed, seed + at, met);
    sit(plan, day);
    for (const prompt of plan.prompts) met.set(prompt, (met.get(prompt) ?? 0) + 1);
    if (at % 4 === 0)
      sit(
        {
          ...plan,
          purpose: 'row',
          of: sats.at(-1)?.id ?? '',
          prompts: plan.prompts.slice(0, 5),
          clock: null,
          takesItself: false,
        },
        day,
      );
  }
  return { made, sats };
}

/** School days, five a week over 36 weeks a year. */
function dayOf(at: number): string {
  const [year, inYear] = [Math.floor(at / schoolDays), at % schoolDays];
  const date = new Date(Date.UTC(2016 + year, 8, 5 + Math.floor(inYear / 5) * 7 + (inYear % 5)));
  return date.toISOString().slice(0, 10);
}

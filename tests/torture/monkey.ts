import type { Dice } from '../../src/core/sheet/dice';
import { type Does, keyHand, sit } from '../journeys/child-hand';
import type { Tablet } from '../journeys/killable';
import { pin } from '../journeys/parent-hand';

/** What a hand may do on the screen that is up. */
interface Choices {
  readonly heading: string;
  readonly hasCard: boolean;
  /** Buttons that may be pressed, by their place among all of them. */
  readonly buttons: readonly { readonly nth: number; readonly name: string; readonly isMain: boolean }[];
  readonly texts: readonly { readonly nth: number; readonly label: string; readonly isNumber: boolean }[];
  /** Radio buttons and ticks. */
  readonly ticks: number;
}

// These lead out of the household, to the printer or to a file of the system.
const shunned = /boat|print|file|save|backup|bring|photo|picture|sound|download|delete|copy/i;

/** Does one thing a child or a parent may do on the screen that is up; gives the screen's heading. */
export async function act(tablet: Tablet, dice: Dice): Promise<string> {
  const { page } = tablet;
  const { heading, hasCard, buttons, texts, ticks } = await page.evaluate(lookAround);
  if (hasCard) {
    const doing: readonly Does[] = ['right', 'right', 'right', 'wrong', 'skip'];
    await sit(page, await keyHand(tablet), {
      until: 1 + dice.below(4),
      does: () => doing[dice.below(doing.length)] ?? 'right',
    });
    return heading;
  }
  for (const { nth, label, isNumber } of texts) {
    const digits = label === 'PIN' && dice.below(5) === 0 ? '0000' : pin;
    const text = /PIN/.test(label) ? digits : isNumber ? `${5 * (1 + dice.below(6))}` : nameFrom(dice);
    if (isNumber ? dice.below(4) === 0 : true) await page.locator(fields).nth(nth).fill(text, quickly);
  }
  if (ticks > 0 && dice.below(2) === 0)
    await page.locator(tickable).nth(dice.below(ticks)).click(quickly).catch(letGo);
  const allowed = buttons.filter(({ name }) => !shunned.test(name));
  const isChild = allowed.some(({ name }) => name === 'Grown-ups');
  const ways = allowed.filter(({ isMain }) => isMain);
  const among = ways.length > 0 && dice.below(4) > 0 ? ways : allowed;
  const chosen = among[dice.below(Math.max(1, among.length))];
  if (chosen) {
    if (isChild) await page.waitForTimeout(420);
    await page.getByRole('button').nth(chosen.nth).click(quickly).catch(letGo);
  }
  return heading;
}

const quickly = { timeout: 1500 } as const;
const fields = 'input:not([type]), input[type=text], input[type=number], input[type=password], textarea';
const tickable = 'input[type=radio], input[type=checkbox], summary, [role=gridcell] button';

/** A screen may change under the hand; then it has simply missed. */
function letGo(): void {}

function nameFrom(dice: Dice): string {
  return `Kit ${String.fromCharCode(97 + dice.below(26))}${dice.below(1000)}`;
}

function lookAround(): Choices {
  const isSeen = (element: Element) => element.getClientRects().length > 0;
  const all = (selector: string) => [...document.querySelectorAll(selector)];
  const nameOf = (element: Element) =>
    (element.getAttribute('aria-label') ?? element.textContent ?? '').trim();
  return {
    heading: document.querySelector('h1')?.textContent ?? '',
    hasCard: document.querySelector('.fact') !== null,
    buttons: all('button, [role=button], summary')
      .filter((element) => element.matches('button, [role=button]'))
      .filter(isSeen)
      .map((element, nth) => ({
        nth,
        name: nameOf(element),
        isOff: element.matches(':disabled'),
        // The ways on of a child's screen, and what a parent's form is for.
        isMain: element.matches('.big, .main'),
      }))
      .filter(({ isOff }) => !isOff),
    texts: all(
      'input:not([type]), input[type=text], input[type=number], input[type=password], textarea',
    ).flatMap((element, nth) =>
      isSeen(element)
        ? [
            {
              nth,
              label: (element as HTMLInputElement).labels?.[0]?.textContent ?? '',
              isNumber: element.matches('[type=number], [inputmode=numeric], [inputmode=decimal]'),
            },
          ]
        : [],
    ),
    ticks: all('input[type=radio], input[type=checkbox], summary, [role=gridcell] button').length,
  };
}

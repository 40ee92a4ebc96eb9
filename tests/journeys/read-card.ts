import type { Page } from './browser';

/** A card as it reads: a fact or number, a story, or a counting pattern as `5 10 ? 20 _ 30`, `?` what is asked for. */
export interface CardText {
  readonly id: string;
  readonly text: string;
}

/** Whether any card is up. */
export async function isCardUp(page: Page): Promise<boolean> {
  return (await page.locator('.card [id^="card-"]').count()) > 0;
}

/** What stands on the card that is up, seen as the page shows it; `null` where there is none. */
export async function readCard(page: Page): Promise<CardText | null> {
  return page.evaluate(() => {
    const named = document.querySelector('.card [id^="card-"]');
    const card = named?.closest('.card');
    if (!named || !card) return null;
    const plain = (element: Element | null) => (element?.textContent ?? '').replaceAll('\u00a0', ' ').trim();
    const cells = [...card.querySelectorAll('.cells li')];
    const pattern = cells.map((cell) =>
      cell.querySelector('output') ? '?' : cell.matches('.open') ? '_' : plain(cell),
    );
    const shown = card.querySelector('.cells b, .shown-step, .story-fact');
    const text =
      cells.length > 0
        ? pattern.join(' ')
        : [...card.querySelectorAll('.story p, .fact')].map(plain).join(' ');
    return { id: named.id, text: shown ? plain(shown) : text };
  });
}

const signs: Readonly<Record<string, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '−': (a, b) => a - b,
  '×': (a, b) => a * b,
  '÷': (a, b) => a / b,
};

/** What in a story tells the operation. */
const tellings: readonly (readonly [told: RegExp, sign: string])[] = [
  [/fairly|Each box holds|equal pieces/, '÷'],
  [/in each|rows? of/, '×'],
  [/\d more\./, '+'],
  [/of them\./, '−'],
];

/** The answer, worked out from what the child reads, not from what the app holds to be true. */
export function answerTo(text: string): string {
  if (/^\d+$/.test(text)) return text;
  const [, a, sign, b] = /^(\d+)\s*([+−×÷])\s*(\d+)/.exec(text) ?? [];
  if (a && sign && b) return worked(sign, Number(a), Number(b), text);
  if (/^[\d?_ ]+$/.test(text)) return `${inPattern(text.split(' '))}`;
  const told = tellings.find(([tells]) => tells.test(text));
  const [first, second] = text.match(/\d+/g) ?? [];
  if (!told || !first || !second) throw new Error(`Nothing to answer is read from “${text}”.`);
  return worked(told[1], Number(first), Number(second), text);
}

function worked(sign: string, a: number, b: number, text: string): string {
  const work = signs[sign];
  if (!work) throw new Error(`No sign is read from “${text}”.`);
  return `${work(a, b)}`;
}

/** Two numbers side by side tell how a pattern goes on; where no place is asked for, that is the answer. */
function inPattern(cells: readonly string[]): number {
  const numbers = cells.map((cell) => (/^\d+$/.test(cell) ? Number(cell) : Number.NaN));
  const at = numbers.findIndex((number, place) => number + (numbers[place + 1] ?? Number.NaN) >= 0);
  const known = numbers[at] ?? Number.NaN;
  const step = (numbers[at + 1] ?? Number.NaN) - known;
  const asked = cells.indexOf('?');
  return asked < 0 ? Math.abs(step) : known + step * (asked - at);
}

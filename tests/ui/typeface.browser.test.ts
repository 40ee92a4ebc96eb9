import { beforeAll, describe, expect, it } from 'vitest';
import '../../src/ui/tokens.css';

/** Of the square a digit is drawn on, px. */
const side = 120;
const context = document.createElement('canvas').getContext('2d');

beforeAll(async () => {
  await Promise.all([400, 600].map((weight) => document.fonts.load(`${weight} 100px "Sumstitch Face"`)));
});

describe('the typeface', () => {
  it('holds every digit and sign a fact is written with', () => {
    for (const sign of '0123456789+−×÷=') {
      expect(widthOf(sign, '"Sumstitch Face", monospace'), sign).toBe(
        widthOf(sign, '"Sumstitch Face", serif'),
      );
    }
  });

  it('sets digits all to one width', () => {
    const line = document.createElement('span');
    line.style.font = '600 100px "Sumstitch Face"';
    line.style.fontVariantNumeric = 'tabular-nums';
    document.body.append(line);
    const widths = [...'0123456789'].map((digit) => {
      line.textContent = digit;
      return line.getBoundingClientRect().width;
    });
    line.remove();
    expect(new Set(widths).size).toBe(1);
  });

  it('draws 1 and 7, 6 and 9, 0 and 8 unlike each other', () => {
    for (const [one, other] of [
      ['1', '7'],
      ['6', '9'],
      ['0', '8'],
    ] as const) {
      expect(shareInCommon(one, other), `${one} and ${other}`).toBeLessThan(0.75);
    }
  });

  it.each([400, 600])('draws 0 open, nothing across it, in weight %i', (weight) => {
    const drawn = ink('0', false, weight);
    const middle = Math.floor(side / 2);
    const across = drawn.slice(middle * side, (middle + 1) * side);
    const down = Array.from({ length: side }, (_, row) => drawn[row * side + middle] ?? false);
    expect(drawn[middle * side + middle]).toBe(false);
    // A slash would be a third stroke on one way or the other.
    expect(strokesAlong(across)).toBe(2);
    expect(strokesAlong(down)).toBe(2);
  });

  it('draws 9 unlike a 6 turned round', () => {
    expect(shareInCommon('6', '9', true)).toBeLessThan(0.95);
  });
});

function widthOf(text: string, family: string): number {
  if (!context) throw new Error('no canvas');
  context.font = `600 100px ${family}`;
  return context.measureText(text).width;
}

/** Of the ink of two digits laid over each other, the share both have; the second may be turned round first. */
function shareInCommon(one: string, other: string, isTurned = false): number {
  const [first, second] = [ink(one, false), ink(other, isTurned)];
  let [both, either] = [0, 0];
  for (let at = 0; at < first.length; at += 1) {
    if (first[at] || second[at]) either += 1;
    if (first[at] && second[at]) both += 1;
  }
  return both / either;
}

function strokesAlong(line: readonly boolean[]): number {
  return line.filter((isInk, at) => isInk && !line[at - 1]).length;
}

function ink(digit: string, isTurned: boolean, weight = 600): readonly boolean[] {
  const canvas = Object.assign(document.createElement('canvas'), { width: side, height: side });
  const drawing = canvas.getContext('2d');
  if (!drawing) throw new Error('no canvas');
  drawing.font = `${weight} ${side}px "Sumstitch Face"`;
  drawing.translate(side / 2, side / 2);
  if (isTurned) drawing.rotate(Math.PI);
  const {
    actualBoundingBoxAscent: up,
    actualBoundingBoxDescent: down,
    actualBoundingBoxLeft: left,
    actualBoundingBoxRight: right,
  } = drawing.measureText(digit);
  drawing.fillText(digit, (left - right) / 2, (up - down) / 2);
  const { data } = drawing.getImageData(0, 0, side, side);
  return Array.from({ length: side * side }, (_, at) => (data[at * 4 + 3] ?? 0) > 127);
}

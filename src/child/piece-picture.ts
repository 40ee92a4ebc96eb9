import type { RuledSat } from '../core/household/history';
import { pieceOf, type SheetDay, sheetDays } from '../core/plan/sheet-day';
import type { ChildSettings } from '../core/record/settings';
import type { Day } from '../core/record/stamp';
import { type Dye, dyes } from '../ui/dye';
import type { PiecePicture } from '../ui/piece';

/** A sheet as its piece; once its day has ended what was not reached is woven in plainly. */
export function picturePiece(sheet: SheetDay, isDayEnded: boolean): PiecePicture {
  const { seed, set } = sheet.ruled.sat;
  const places = pieceOf(sheet, isDayEnded).flat();
  return { places: places.map(({ op, state }) => ({ op, state })), seed, dye: dyeOf(set) };
}

/** All of a child's pieces, in the order of the sittings; `isTodayDone`: nothing is left of today but its piece. */
export function pictureCloth(
  sittings: readonly RuledSat[],
  limits: ChildSettings['limits'],
  today: Day,
  isTodayDone: boolean,
): readonly PiecePicture[] {
  return sheetDays(sittings, limits).map((sheet) =>
    picturePiece(sheet, isTodayDone || sheet.ruled.sat.day < today),
  );
}

/** A set's thread: the same set is always worked in the same colour. */
export function dyeOf(set: string | null): Dye {
  const sum = [...(set ?? '')].reduce((total, letter) => total + (letter.codePointAt(0) ?? 0), 0);
  return dyes[sum % dyes.length] ?? 'indigo';
}

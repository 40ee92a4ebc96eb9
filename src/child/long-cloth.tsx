import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Length, type PiecePicture, pieceLength } from '../ui/piece';
import { WovenEdge } from '../ui/woven-edge';
import { Action } from './action';
import './long-cloth.css';
import { StepScreen } from './step-screen';
import { words } from './words';

export interface LongClothProps {
  /** In the order of the sittings. */
  readonly pieces: readonly PiecePicture[];
  readonly edge: number;
  readonly onBack: () => void;
  readonly onGrownUps: () => void;
}

/** Where the stitches begin and end within the strip, px. */
const marginPx = 14;

/** All pieces so far, one strip; ten years of it are longer than a page can hold, so only what is near is drawn. */
export function LongCloth({ pieces, edge, onBack, onGrownUps }: LongClothProps) {
  const strip = useRef<HTMLDivElement>(null);
  const seen = useSignal<readonly [fromPx: number, toPx: number]>([0, 0]);
  const look = () => {
    const at = strip.current;
    if (at) seen.value = [at.scrollLeft - at.clientWidth, at.scrollLeft + 2 * at.clientWidth];
  };
  useLayoutEffect(() => {
    // The newest end first.
    if (strip.current) strip.current.scrollLeft = strip.current.scrollWidth;
    look();
  }, [pieces]);

  // The side of a stitch: what the height of the screen has room for.
  const side = Math.round(Math.min(64, Math.max(32, innerHeight * 0.075)));
  let endPx = 0;
  const placed = pieces.map((piece, index) => {
    const fromPx = endPx;
    endPx += pieceLength(piece) * side;
    return { piece, index, fromPx, toPx: endPx };
  });
  const [fromPx, toPx] = seen.value;
  return (
    <StepScreen
      title={words.yourLongCloth}
      name="long-cloth"
      edge={edge}
      onGrownUps={onGrownUps}
      actions={
        <Action plain onPress={onBack}>
          {words.back}
        </Action>
      }
    >
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolled region must be within reach of the keyboard */}
      <section class="strip" ref={strip} onScroll={look} tabIndex={0} aria-label={words.longCloth}>
        <div class="strip-cloth" style={{ width: `${endPx + 2 * marginPx}px`, '--side': `${side}px` }}>
          <WovenEdge edge={edge} height={28} />
          <div class="strip-stitches">
            {placed
              .filter((one) => one.toPx > fromPx && one.fromPx < toPx)
              .map((one) => (
                <div key={one.index} style={{ left: `${one.fromPx}px`, width: `${one.toPx - one.fromPx}px` }}>
                  <Length piece={one.piece} />
                </div>
              ))}
          </div>
          <WovenEdge edge={edge} height={28} />
        </div>
      </section>
    </StepScreen>
  );
}

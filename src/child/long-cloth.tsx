import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Length, type PiecePicture, pieceRows } from '../ui/piece';
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

const edgePx = 28;

/** What is in view of the strip, with as much again on either side, and how large a stitch is there. */
interface Seen {
  readonly fromPx: number;
  readonly toPx: number;
  readonly sidePx: number;
}

/** All pieces so far, one strip that grows downward; ten years of it are longer than a page can hold, so only what is near is drawn. */
export function LongCloth({ pieces, edge, onBack, onGrownUps }: LongClothProps) {
  const strip = useRef<HTMLElement>(null);
  const seen = useSignal<Seen>({ fromPx: 0, toPx: 0, sidePx: sideOfStitch() });
  const look = () => {
    const at = strip.current;
    if (!at) return;
    const { scrollTop, clientHeight } = at;
    const [fromPx, toPx] = [scrollTop - clientHeight, scrollTop + 2 * clientHeight];
    seen.value = { fromPx, toPx, sidePx: sideOfStitch() };
  };
  const { fromPx, toPx, sidePx } = seen.value;
  useLayoutEffect(() => {
    // The newest end first.
    if (strip.current) strip.current.scrollTop = strip.current.scrollHeight;
    look();
  }, [pieces, sidePx]);
  useLayoutEffect(() => {
    const resized = new ResizeObserver(look);
    if (strip.current) resized.observe(strip.current);
    return () => resized.disconnect();
  }, []);

  const placed = placeDown(pieces, sidePx);
  const endPx = placed.at(-1)?.toPx ?? 0;
  // The edges too are drawn only where they are near, each piece of them beginning with a whole motif.
  const edgeFromPx = Math.max(0, Math.floor(fromPx / edgePx) * edgePx);
  const edgeDown = { top: `${edgeFromPx}px`, height: `${Math.max(0, Math.min(endPx, toPx) - edgeFromPx)}px` };
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
        <div
          class="strip-cloth"
          style={{ height: `${endPx}px`, '--side': `${sidePx}px`, '--edge': `${edgePx}px` }}
        >
          {['before', 'after'].map((side) => (
            <div key={side} class={`strip-edge ${side}`} style={edgeDown}>
              <WovenEdge edge={edge} height={edgePx} isUpright />
            </div>
          ))}
          {placed
            .filter((one) => one.toPx > fromPx && one.fromPx < toPx)
            .map((one) => (
              <div
                key={one.index}
                class="strip-piece"
                style={{ top: `${one.fromPx}px`, height: `${one.toPx - one.fromPx}px` }}
              >
                <Length piece={one.piece} />
              </div>
            ))}
        </div>
      </section>
    </StepScreen>
  );
}

/** The side of a stitch, px: what the screen has room for across the strip, and a few pieces down it. */
function sideOfStitch(): number {
  const across = (innerWidth - 2 * edgePx - 72) / 5;
  return Math.round(Math.min(84, Math.max(30, Math.min(across, innerHeight * 0.08))));
}

function placeDown(pieces: readonly PiecePicture[], sidePx: number) {
  let endPx = 0;
  return pieces.map((piece, index) => {
    const fromPx = endPx;
    endPx += pieceRows(piece) * sidePx;
    return { piece, index, fromPx, toPx: endPx };
  });
}

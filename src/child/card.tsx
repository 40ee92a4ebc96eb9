import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { type Prompt, type PromptId, parsePrompt } from '../core/fact/prompt';
import { signs, writtenFact, writtenWhole } from '../core/fact/written';
import type { ChildSettings } from '../core/record/settings';
import './card.css';
import { LineCard } from './line-card';
import { cardTiming, type OnShown, watchOnset } from './onset';
import { StoryCard } from './story-card';
import { WayShown, type WayTo } from './way';
import { words } from './words';

/** What is on the card. `showing` is another number each time a card comes up, even the same fact again. */
export interface CardFace {
  readonly showing: number;
  readonly prompt: PromptId;
  /** The fact with its answer, to be read and then entered. */
  readonly whole: boolean;
  /** What was answered before; `null` outside mending, or when nothing was. */
  readonly wrote: string | null;
}

export interface CardProps {
  readonly face: ReadonlySignal<CardFace>;
  readonly entry: ReadonlySignal<string>;
  readonly layout: ChildSettings['layout'];
  readonly onShown: (showing: number, ...onset: Parameters<OnShown>) => void;
  /** The way to a new fact of a card round, beside it while it is shown whole. */
  readonly wayTo?: WayTo;
}

/** One question and the outline for its answer. Only this renders from card to card, and a digit changes one text. */
export function Card({ face, entry, layout, onShown, wayTo }: CardProps) {
  const { showing, prompt, whole, wrote } = face.value;
  const parsed = parsePrompt(prompt);
  if (!parsed) return null;
  const asked = { id: `card-${showing}`, whole, entry, onShown: onShownAs(showing, onShown) };
  if (parsed.kind === 'line') return <LineCard key={showing} line={parsed} {...asked} />;
  if (parsed.kind === 'story') return <StoryCard key={showing} story={parsed} {...asked} />;
  const isStacked = layout === 'stacked' && parsed.kind === 'fact';
  const lines = isStacked ? stack(parsed, whole) : [write(parsed, whole)];
  const way = whole ? (wayTo?.(prompt) ?? null) : null;
  // The way's own line takes the note's place: a screen has six words.
  const note = way ? null : noteOn(parsed, whole, wrote);
  const longest = Math.max(...lines.map(({ length }) => length));
  const looks = [
    isStacked ? 'stacked' : 'across',
    note !== null && 'noted',
    whole && 'whole',
    way && 'taught',
  ];
  return (
    <div class={`card ${looks.filter(Boolean).join(' ')}`} style={{ '--signs': `${longest}` }}>
      {note !== null && <p class="note">{note}</p>}
      <Fact key={showing} {...asked} text={lines.join('\n')} />
      <output class="answer" aria-label={words.yourAnswer}>
        {entry}
      </output>
      {way && <WayShown way={way} />}
    </div>
  );
}

function onShownAs(showing: number, onShown: CardProps['onShown']): OnShown {
  return (...at) => onShown(showing, ...at);
}

/** The small line above: what to do with the card where it isn't a fact to be answered for the first time. */
function noteOn(prompt: PlainPrompt, whole: boolean, wrote: string | null): ComponentChildren {
  if (whole) return words.nowYou;
  if (prompt.kind === 'copy') return words.copy;
  if (wrote === null) return null;
  return (
    <>
      {words.wrote} <b>{wrote}</b>
    </>
  );
}

type PlainPrompt = Extract<Prompt, { kind: 'fact' | 'copy' }>;

interface FactProps {
  readonly id: string;
  readonly text: string;
  readonly onShown: OnShown;
}

/** A new element for every showing, opaque from its first frame: that first paint is what gets timed. */
function Fact({ id, text, onShown }: FactProps) {
  // The first render's callback is the one of this showing.
  useLayoutEffect(() => watchOnset(id, onShown), []);
  return (
    <p class="fact" id={id} {...{ elementtiming: cardTiming }}>
      {text}
    </p>
  );
}

// Spaces that don't break, so that a fact is never parted at the end of a line.
const gap = '\u00a0';

function write(prompt: PlainPrompt, whole: boolean): string {
  if (prompt.kind === 'copy') return `${prompt.answer}`;
  const written = whole ? writtenWhole(prompt.fact) : `${writtenFact(prompt.fact)} =`;
  return written.replaceAll(' ', gap);
}

function stack(prompt: Prompt & { kind: 'fact' }, whole: boolean): readonly string[] {
  const { op, a, b, answer } = prompt.fact;
  const lines = [`${a}`, `${signs[op]}${gap}${b}`];
  return whole ? [...lines, `=${gap}${answer}`] : lines;
}

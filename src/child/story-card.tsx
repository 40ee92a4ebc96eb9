import { useLayoutEffect } from 'preact/hooks';
import { writtenWhole } from '../core/fact/written';
import type { Story } from '../core/gap-line/story';
import { storyWords } from '../core/gap-line/words';
import './asked.css';
import type { AskedProps } from './line-card';
import { cardTiming, watchOnset } from './onset';
import { words } from './words';

/** A story set for reading: what happens, what is asked, and the unit beside the answer. */
export function StoryCard({ story, id, whole, entry, onShown }: AskedProps & { readonly story: Story }) {
  useLayoutEffect(() => watchOnset(id, onShown), []);
  const { told, asked, unit } = storyWords(story);
  return (
    <div class="card asked story-card">
      <div class="story">
        <p id={id} {...{ elementtiming: cardTiming }}>
          {told}
        </p>
        <p>{asked}</p>
        {whole && <p class="story-fact">{writtenWhole(story.fact)}</p>}
      </div>
      <p class="with-unit">
        <output class="answer" aria-label={words.yourAnswer}>
          {entry}
        </output>
        <span>{unit}</span>
      </p>
    </div>
  );
}

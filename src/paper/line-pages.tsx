import { type PromptId, parsePrompt } from '../core/fact/prompt';
import type { GapLine } from '../core/gap-line/gap-line';
import type { Story } from '../core/gap-line/story';
import { lineAsk, storyWords } from '../core/gap-line/words';
import { PaperPage } from './paper-page';
import type { PaperSize } from './paper-size';
import { paperWords } from './words';

/** A page of gap lines and stories: prompts as the plan makes them, each line's three questions in a row. */
export interface LinePage {
  readonly name: string;
  readonly day: string;
  readonly prompts: readonly PromptId[];
}

export interface LinePagesProps {
  readonly pages: readonly LinePage[];
  readonly size: PaperSize;
  readonly hasKey: boolean;
}

/** Pages of gap lines and stories, and their answers on the last. */
export function LinePages({ pages, size, hasKey }: LinePagesProps) {
  return (
    <>
      {pages.map((page) => (
        <PaperPage key={`${page.name} ${page.day}`} size={size} kind="some-lines">
          <header>
            <p>{page.name}</p>
            <p>{page.day}</p>
          </header>
          <h2>{paperWords.lines}</h2>
          {linesOf(page).map(({ gaps, rule }) => (
            <div key={gaps.id} class="gap-line">
              {gaps.shown.map((number, at) => (
                <span key={at} class={number === null ? 'gap' : ''}>
                  {number}
                </span>
              ))}
              <span class="rule">
                {lineAsk(rule)} <span class="gap" />
              </span>
            </div>
          ))}
          {storiesOf(page).length > 0 && <h2>{paperWords.stories}</h2>}
          {storiesOf(page).map((story) => {
            const { told, asked, unit } = storyWords(story);
            return (
              <div key={story.id} class="story">
                <p>{`${told} ${asked}`}</p>
                <p class="answer">
                  <span class="gap" /> {unit}
                </p>
              </div>
            );
          })}
        </PaperPage>
      ))}
      {hasKey && <LineKey pages={pages} size={size} />}
    </>
  );
}

function LineKey({ pages, size }: Omit<LinePagesProps, 'hasKey'>) {
  return (
    <PaperPage size={size} kind="some-keys">
      <h2>{paperWords.key}</h2>
      {pages.map((page) => (
        <section key={`${page.name} ${page.day}`} class="key">
          <h3>{`${page.name}, ${page.day}`}</h3>
          <ol>
            {linesOf(page).map(({ gaps, second, rule }) => (
              <li key={gaps.id}>{`${gaps.answer}, ${second.answer}; ${rule.way} by ${rule.answer}`}</li>
            ))}
          </ol>
          <p>
            {storiesOf(page)
              .map(({ answer, ...story }) => `${answer} ${storyWords({ ...story, answer }).unit}`)
              .join('; ')}
          </p>
        </section>
      ))}
    </PaperPage>
  );
}

interface WholeLine {
  readonly gaps: GapLine;
  readonly second: GapLine;
  readonly rule: GapLine;
}

function linesOf({ prompts }: LinePage): readonly WholeLine[] {
  const lines = prompts.flatMap((id) => {
    const prompt = parsePrompt(id);
    return prompt?.kind === 'line' ? [prompt] : [];
  });
  return lines.flatMap((gaps, at) => {
    const [second, rule] = [lines[at + 1], lines[at + 2]];
    return at % 3 === 0 && second && rule ? [{ gaps, second, rule }] : [];
  });
}

function storiesOf({ prompts }: LinePage): readonly Story[] {
  return prompts.flatMap((id) => {
    const prompt = parsePrompt(id);
    return prompt?.kind === 'story' ? [prompt] : [];
  });
}

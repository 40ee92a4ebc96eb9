import type { Desk } from '../../state/desk';
import { Heading } from '../parts/heading';
import { storageText } from '../parts/storage-words';
import { aboutWords } from './words';

/** What the tool is and is not. */
export function AboutPage({ desk }: { readonly desk: Desk }) {
  const { persisted } = desk.storage.value;
  return (
    <>
      <Heading>{aboutWords.title}</Heading>
      {aboutWords.parts.map((part) => (
        <section key={part.title}>
          <h2>{part.title}</h2>
          {part.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
      ))}
      <h2>{aboutWords.storageTitle}</h2>
      <p>{storageText(persisted)}</p>
    </>
  );
}

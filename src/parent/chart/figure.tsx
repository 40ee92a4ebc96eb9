import './chart.css';
import type { ComponentChildren } from 'preact';
import { Opened } from '../parts/opened';
import { chartWords } from './words';

export interface ChartTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface FigureProps {
  readonly title: string;
  /** What the marks and lines mean. */
  readonly legend?: ComponentChildren;
  readonly table: () => ChartTable;
  readonly children: ComponentChildren;
}

/** A chart with its title above and the same as a table behind it. */
export function Figure({ title, legend, table, children }: FigureProps) {
  return (
    <figure class="chart">
      <figcaption>{title}</figcaption>
      {children}
      {legend && <p class="hint legend">{legend}</p>}
      <Opened title={chartWords.table}>{() => <FigureTable title={title} {...table()} />}</Opened>
    </figure>
  );
}

function FigureTable({ title, columns, rows }: ChartTable & { readonly title: string }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable by keyboard
    <section class="table-frame" tabIndex={0} aria-label={title}>
      <table class="plain">
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([first, ...cells], row) => (
            <tr key={`${row} ${first}`}>
              <th scope="row">{first}</th>
              {cells.map((cell, column) => (
                <td key={columns[column + 1]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
